package org.tidegate.rules;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelValidationException;
import dev.cel.common.types.MapType;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.parser.CelStandardMacro;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A compiled CEL condition over the map {@code e} of named facts. Pure: the same facts always give the same answer. */
public final class Condition {

    /** The expression is no boolean condition over {@code e}. */
    static final class BadCondition extends IllegalArgumentException {
        BadCondition(String message, Throwable cause) {
            super(message, cause);
        }
    }

    private final String text;
    private final CelAbstractSyntaxTree checked;
    private volatile CelRuntime.@Nullable Program program;

    private Condition(String text, CelAbstractSyntaxTree checked) {
        this.text = text;
        this.checked = checked;
    }

    /** @throws IllegalArgumentException where it does not compile to a boolean */
    public static Condition of(String text) {
        try {
            return new Condition(text, Checker.CEL.compile(text).getAst());
        } catch (CelValidationException e) {
            throw new BadCondition(String.valueOf(e.getMessage()).replaceAll("\\s+", " "), e);
        }
    }

    /**
     * Whether it holds.
     *
     * @param facts values are Boolean, Long, Double or String
     * @throws IllegalStateException where it asks for a fact that is not there
     */
    public boolean holds(Map<String, Object> facts) {
        try {
            return Boolean.TRUE.equals(program().eval(Map.of("e", facts)));
        } catch (CelEvaluationException e) {
            throw new IllegalStateException("the condition '" + text + "' cannot be evaluated: " + e.getMessage(), e);
        }
    }

    /** Planned at the first use: a process that only takes mail in evaluates nothing. Planning twice does no harm. */
    private CelRuntime.Program program() throws CelEvaluationException {
        CelRuntime.Program planned = program;
        if (planned == null) {
            planned = Planner.CEL.createProgram(checked);
            program = planned;
        }
        return planned;
    }

    /** The expression as written. */
    public String text() {
        return text;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Condition c && c.text.equals(text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }

    /** Built on first use: commands that need no rules do not pay for it. */
    private static final class Checker {
        static final CelCompiler CEL = CelCompilerFactory.standardCelCompilerBuilder()
                .setStandardMacros(CelStandardMacro.STANDARD_MACROS)
                .addVar("e", MapType.create(SimpleType.STRING, SimpleType.DYN))
                .setResultType(SimpleType.BOOL)
                .build();
    }

    /** Built on first use, as above. */
    private static final class Planner {
        static final CelRuntime CEL = CelRuntimeFactory.plannerRuntimeBuilder().build();
    }
}
