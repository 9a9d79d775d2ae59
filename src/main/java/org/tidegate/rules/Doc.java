package org.tidegate.rules;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** One sentence on a key of the rule files; the reference of all keys is generated from these. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.TYPE})
public @interface Doc {
    String value();

    /** A list, map or text that may be left out is then empty; everything else that is no Optional must be written. */
    boolean required() default true;
}
