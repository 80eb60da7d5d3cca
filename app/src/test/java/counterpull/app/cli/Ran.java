package counterpull.app.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the program inside the test.
 *
 * @param code exit code
 * @param out what went to standard output
 * @param err what went to standard error
 */
record Ran(int code, String out, String err) {
    static Ran with(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new Ran(code, out.toString(), err.toString());
    }
}
