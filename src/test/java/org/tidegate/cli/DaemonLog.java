package org.tidegate.cli;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.AppenderBase;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.slf4j.LoggerFactory;

/** What the daemon logs while this is open. */
final class DaemonLog implements AutoCloseable {

    private final Logger logger = (Logger) LoggerFactory.getLogger(Daemon.class);
    private final List<String> lines = new CopyOnWriteArrayList<>();
    private final AppenderBase<ILoggingEvent> appender = new AppenderBase<>() {
        @Override
        protected void append(ILoggingEvent event) {
            lines.add(event.getFormattedMessage());
        }
    };

    DaemonLog() {
        appender.start();
        logger.addAppender(appender);
        logger.setAdditive(false);
    }

    /** One clear line: those that contain the words. */
    List<String> with(String words) {
        return lines.stream().filter(l -> l.contains(words)).toList();
    }

    @Override
    public void close() {
        logger.setAdditive(true);
        logger.detachAppender(appender);
    }
}
