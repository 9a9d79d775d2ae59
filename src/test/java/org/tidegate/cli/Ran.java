package org.tidegate.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;

/** One command run inside this process: exit code and what it wrote. */
record Ran(int code, String out, String err) {

    static Ran command(Object... arguments) {
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        StringWriter out = new StringWriter();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(words, new PrintWriter(out), new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Ran(code, out.toString(), err.toString(StandardCharsets.UTF_8));
    }
}
