package counterpull.picture;

import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressProfile;

/** Lays a figure out on its size and draws its parts from back to front. */
final class FigureDrawing {
    private static final double ABOVE_FLOOR = 0.05;
    private final Figure figure;
    private final View view;

    FigureDrawing(Figure figure, View view) {
        this.figure = figure;
        this.view = view;
    }

    String draw() {
        SledPoints points = new SledPoints(figure.profile());
        SledShape shape = new SledShape(figure, points);
        Box picture = new Box(0, 0, view.size().width(), view.size().height());
        Stage stage = stage(points, shape, picture);
        title(stage);
        SledDrawing sled = new SledDrawing(stage, shape);
        BodyDrawing body = new BodyDrawing(stage);
        sled.draw();
        ghosts(sled, body);
        body.draw();
        new RubberDrawing(stage, view.wording()).draw();
        RulerDrawing ruler = new RulerDrawing(stage, shape, view.wording().length());
        ruler.draw();
        new PushDrawing(stage, view.wording()).draw();
        body.joints();
        DimensionDrawing dimension = new DimensionDrawing(stage, shape, view.wording());
        if (stage.words().roomy()) {
            dimension.draw();
        }
        dimension.scale(picture, PushDrawing.newtonsPerMetre(figure.profile()));
        sled.words(view.wording());
        stage.svg().open("labels");
        stage.words().draw(stage.svg());
        stage.svg().close();
        return stage.svg().finish();
    }

    private Stage stage(SledPoints points, SledShape shape, Box picture) {
        Box room = new Box(20, 34, picture.width() - 40, picture.height() - 34 - 34);
        Camera camera = Camera.holding(shape.extent(), new Sight(points.tilt(), 1), room, ABOVE_FLOOR);
        double floor = camera.floorUnder(points.hip(0)).y();
        Box aboveFloor = new Box(6, 6, picture.width() - 12, floor - 10);
        Svg svg = new Svg(view, "Person on the sled, " + words());
        return new Stage(figure, points, new Sheet(camera, svg, new FigureWords(aboveFloor, view.size())));
    }

    private String words() {
        PressProfile profile = figure.profile();
        String angle = view.wording().angle().say(profile.driving(figure.position()));
        return "knee " + angle + ", " + figure.phase().words();
    }

    private void title(Stage stage) {
        Lettering head = Lettering.head(Ink.INK);
        Vec at = new Vec(12, 22);
        String words = Words.sentence(words());
        stage.svg().text(at, words, head);
        stage.words().take(Box.of(at, words, head));
    }

    private void ghosts(SledDrawing sled, BodyDrawing body) {
        for (int end : new int[] {0, figure.profile().positions() - 1}) {
            if (end != figure.position()) {
                body.ghost(end);
                sled.ghostPlate(end);
            }
        }
    }
}
