package org.tidegate.rules;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Bounds of a number in the rule files, both inclusive; a list of numbers is bounded element by element. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Range {
    double min() default 0;

    double max() default Long.MAX_VALUE;
}
