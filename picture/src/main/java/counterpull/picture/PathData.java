package counterpull.picture;

import counterpull.engine.planar.Vec;

/** The data of an SVG path, built up point by point, px. */
final class PathData {
    private final StringBuilder out = new StringBuilder();

    PathData move(Vec to) {
        return add('M', to);
    }

    PathData line(Vec to) {
        return add('L', to);
    }

    PathData quad(Vec control, Vec to) {
        return add('Q', control).add(' ', to);
    }

    PathData cubic(Vec first, Vec second, Vec to) {
        return add('C', first).add(' ', second).add(' ', to);
    }

    /** A circular arc, clockwise on the screen. */
    PathData clockwise(double radius, boolean large, Vec to) {
        return arc(radius, large, 1, to);
    }

    /** A circular arc, counter-clockwise on the screen. */
    PathData counterClockwise(double radius, boolean large, Vec to) {
        return arc(radius, large, 0, to);
    }

    private PathData arc(double radius, boolean large, int sweep, Vec to) {
        String r = Numbers.coordinate(radius);
        out.append('A')
                .append(r)
                .append(' ')
                .append(r)
                .append(" 0 ")
                .append(large ? 1 : 0)
                .append(' ')
                .append(sweep);
        return add(' ', to);
    }

    PathData close() {
        out.append('Z');
        return this;
    }

    boolean empty() {
        return out.length() == 0;
    }

    private PathData add(char command, Vec at) {
        out.append(command).append(Numbers.coordinate(at.x())).append(' ').append(Numbers.coordinate(at.y()));
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
