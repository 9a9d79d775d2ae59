package org.tidegate.console;

import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.context.annotation.ComponentScan;

/** The web pages as one application; what they work on is put in by {@link ConsoleServer}. */
@SpringBootConfiguration
@EnableAutoConfiguration
@ComponentScan("org.tidegate.console")
class ConsoleConfiguration {}
