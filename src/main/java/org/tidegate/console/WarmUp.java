package org.tidegate.console;

import org.apache.catalina.startup.Tomcat;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;

/**
 * Loads the classes of the console while rules and store are opened: on two cores the pages are there a second earlier. A rehearsal on
 * no port; nothing depends on it, and what goes wrong here goes wrong again, and is told, where the console starts.
 */
public final class WarmUp {

    private static final Logger LOG = LoggerFactory.getLogger(WarmUp.class);

    private WarmUp() {}

    /** Returns at once. */
    public static void begin() {
        Thread thread = new Thread(WarmUp::rehearse, "warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    private static void rehearse() {
        ConsoleServer.keepLog();
        try {
            new Tomcat().getConnector();
            new SpringApplicationBuilder(ConsoleConfiguration.class)
                    .web(WebApplicationType.NONE)
                    .logStartupInfo(false)
                    .registerShutdownHook(false)
                    .bannerMode(Banner.Mode.OFF)
                    .lazyInitialization(true)
                    .run()
                    .close();
        } catch (RuntimeException e) {
            LOG.debug("The rehearsal of the console failed", e);
        }
    }
}
