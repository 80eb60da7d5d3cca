package counterpull.app.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/**
 * The program's standard output, remembering what went wrong: a writer swallows it, and a full disk must not look like
 * success. A reader that has seen enough ("| head") is no fault.
 */
final class StandardOutput extends OutputStream {
    private final OutputStream to = new FileOutputStream(FileDescriptor.out);
    private IOException first;

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) {
        if (first != null) {
            return;
        }
        try {
            to.write(bytes, from, count);
        } catch (IOException e) {
            first = e;
        }
    }

    /** What went wrong that a person has to hear of; empty where all is well. */
    String trouble() {
        boolean readerLeft = first != null && "Broken pipe".equals(first.getMessage());
        return first == null || readerLeft ? "" : String.valueOf(first.getMessage());
    }
}
