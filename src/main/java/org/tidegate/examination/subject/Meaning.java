package org.tidegate.examination.subject;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;

/** One way to understand a line's time and date. */
record Meaning(
        Optional<LocalDateTime> time,
        Optional<String> statedZone,
        boolean dateStated,
        Map<String, Found<?>> parts,
        double cost) {}
