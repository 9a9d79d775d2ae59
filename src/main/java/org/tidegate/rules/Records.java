package org.tidegate.rules;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** Calls canonical constructors. */
final class Records {

    private Records() {}

    /** @throws InvocationTargetException where the record's own check refuses the values */
    static Object create(Class<?> type, List<Object> arguments) throws InvocationTargetException {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<?> canonical = type.getDeclaredConstructor(types);
            return canonical.newInstance(arguments.toArray());
        } catch (NoSuchMethodException | InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException(type + " is no record of the rules", e);
        }
    }
}
