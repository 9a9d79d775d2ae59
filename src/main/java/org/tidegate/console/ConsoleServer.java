package org.tidegate.console;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.logging.LoggingSystem;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import org.tidegate.casework.Casebook;
import org.tidegate.casework.Claiming;
import org.tidegate.casework.Desk;
import org.tidegate.casework.Drawings;
import org.tidegate.casework.Explaining;
import org.tidegate.casework.Judging;
import org.tidegate.casework.NewTimes;
import org.tidegate.casework.NotHeardFrom;
import org.tidegate.casework.Observing;
import org.tidegate.casework.OutboxDesk;
import org.tidegate.casework.ReadingDesk;
import org.tidegate.casework.Registering;
import org.tidegate.casework.Reminding;
import org.tidegate.casework.Repeating;
import org.tidegate.casework.Replying;
import org.tidegate.casework.Retaining;
import org.tidegate.casework.Rights;
import org.tidegate.casework.SignIns;
import org.tidegate.casework.Splitting;
import org.tidegate.report.Handovers;
import org.tidegate.report.Outlook;
import org.tidegate.rules.Rules;

/** The web pages, on one address of this machine. */
public final class ConsoleServer implements AutoCloseable {

    private final ConfigurableApplicationContext context;
    private final String host;

    private ConsoleServer(ConfigurableApplicationContext context, String host) {
        this.context = context;
        this.host = host;
    }

    /** The port is taken by another program. */
    public static final class PortTaken extends RuntimeException {
        private static final long serialVersionUID = 1L;

        PortTaken(int port, Throwable cause) {
            super(
                    "Port " + port + " is taken by another program; choose another with --port, or 0 for a free one.",
                    cause);
        }
    }

    /**
     * Starts serving.
     *
     * @param port 0 for a free one
     * @throws PortTaken where another program listens there
     */
    public static ConsoleServer start(String host, int port, Desk desk, Rules rules, Clock clock) {
        return start(host, port, desk, rules, clock, Optional.empty());
    }

    /** As above; people may sign in at a provider too. */
    public static ConsoleServer start(
            String host, int port, Desk desk, Rules rules, Clock clock, Optional<OpenId> openId) {
        keepLog();
        SpringApplication application = new SpringApplicationBuilder(ConsoleConfiguration.class)
                .web(WebApplicationType.SERVLET)
                .logStartupInfo(false)
                .registerShutdownHook(false)
                .bannerMode(org.springframework.boot.Banner.Mode.OFF)
                .properties(settings(host, port, openId.isPresent()))
                .initializers(context -> register((GenericApplicationContext) context, desk, rules, clock))
                .initializers(context -> openId.ifPresent(
                        provider -> ((GenericApplicationContext) context).registerBean(OpenId.class, () -> provider)))
                .build();
        try {
            return new ConsoleServer(application.run(), host);
        } catch (RuntimeException e) {
            throw portTaken(e) ? new PortTaken(port, e) : e;
        }
    }

    /** A strict cookie would be lost on the way back from a provider; changes need the form's token in any case. */
    private static Map<String, Object> settings(String host, int port, boolean fromProvider) {
        return Map.ofEntries(
                Map.entry("server.address", host),
                Map.entry("server.port", port),
                Map.entry("server.servlet.session.timeout", "30m"),
                Map.entry("server.servlet.session.cookie.name", "tidegate"),
                Map.entry("server.servlet.session.cookie.http-only", true),
                Map.entry("server.servlet.session.cookie.same-site", fromProvider ? "lax" : "strict"),
                Map.entry("server.error.include-stacktrace", "never"),
                Map.entry("spring.thymeleaf.prefix", "classpath:/console/templates/"),
                Map.entry("spring.web.resources.static-locations", "classpath:/console/static/"),
                Map.entry("spring.mvc.static-path-pattern", "/static/**"),
                Map.entry("spring.messages.basename", "console/messages"),
                Map.entry("spring.messages.fallback-to-system-locale", false),
                Map.entry("spring.main.lazy-initialization", true));
    }

    private static void register(GenericApplicationContext context, Desk desk, Rules rules, Clock clock) {
        context.registerBean(Casebook.class, desk::casebook);
        context.registerBean(Claiming.class, desk::claiming);
        context.registerBean(Judging.class, desk::judging);
        context.registerBean(Splitting.class, desk::splitting);
        context.registerBean(Replying.class, desk::replying);
        context.registerBean(ReadingDesk.class, desk::reading);
        context.registerBean(OutboxDesk.class, desk::outbox);
        context.registerBean(Registering.class, desk::registers);
        context.registerBean(NotHeardFrom.class, desk::notHeardFrom);
        context.registerBean(Reminding.class, desk::reminding);
        context.registerBean(Observing.class, desk::observing);
        context.registerBean(Repeating.class, desk::repeating);
        context.registerBean(Retaining.class, desk::retaining);
        context.registerBean(NewTimes.class, desk::newTimes);
        context.registerBean(Outlook.class, () -> new Outlook(desk.store(), desk.casebook(), rules, clock));
        context.registerBean(Rights.class, desk::rights);
        context.registerBean(SignIns.class, desk::signIns);
        context.registerBean(Drawings.class, desk::drawings);
        context.registerBean(Explaining.class, desk::explaining);
        context.registerBean(Handovers.class, () -> new Handovers(desk.store(), desk.casebook(), rules));
        context.registerBean(Rules.class, () -> rules);
        context.registerBean(Clock.class, () -> clock);
    }

    /** The log is set up already, and not by what serves the pages. */
    static void keepLog() {
        System.setProperty(LoggingSystem.SYSTEM_PROPERTY, LoggingSystem.NONE);
    }

    private static boolean portTaken(Throwable e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof PortInUseException || t instanceof java.net.BindException) {
                return true;
            }
        }
        return false;
    }

    /** A part of the running pages. */
    <T> T bean(Class<T> type) {
        return context.getBean(type);
    }

    public int port() {
        return Integer.parseInt(String.valueOf(context.getEnvironment().getProperty("local.server.port")));
    }

    /** The address to open in a browser. */
    public String address() {
        return "http://" + host + ":" + port() + "/";
    }

    @Override
    public void close() {
        context.close();
    }
}
