package counterpull.engine.load;

import counterpull.engine.Refusal;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.planar.Vec;

/** Seeded random levers that a random limb can carry, for contract tests. */
final class RandomLever {
    private final RandomLimb random;

    RandomLever(RandomLimb random) {
        this.random = random;
    }

    /** A limb whose every segment turns by itself: direction a + bx + cx², so that the joints on the way move too. */
    ChainPath swinging() {
        ChainPath limb = random.next();
        ChainPath.Bends bends = new ChainPath.Bends(limb.positions(), limb.segments());
        double way = random.below(2) == 0 ? 1 : -1;
        for (int k = 0; k < limb.segments(); k++) {
            double start = random.between(-3, 3);
            double first = way * random.between(0.4, 1.2);
            double second = random.between(-0.2, 0.2);
            for (int i = 0; i < limb.positions(); i++) {
                double x = limb.course().at(i);
                bends.set(i, k, start + first * x + second * x * x, first + 2 * second * x, 2 * second);
            }
        }
        return new ChainPath(limb.chain(), limb.course(), limb.senses(), bends);
    }

    /** A frame on one of the limb's segments: drawn again until the geometry has an answer. */
    LeverFrame on(ChainPath path) {
        for (int attempt = 0; attempt < 1000; attempt++) {
            LeverFrame frame = draw(path);
            if (solves(frame, path)) {
                return frame;
            }
        }
        throw new AssertionError("no lever fits this limb");
    }

    private LeverFrame draw(ChainPath path) {
        int segment = random.below(Math.min(2, path.segments()));
        double out = random.between(0.15, 0.45);
        Vec pivot = path.joint(segment, path.positions() / 2)
                .plus(new Vec(random.between(-0.1, 0.1), random.between(-0.1, 0.1)));
        return new LeverFrame(
                pivot,
                switch (random.below(3)) {
                    case 0 -> new Cuff(segment, out);
                    case 1 -> RollerPad.against(segment, out);
                    default -> new RollerPad(segment, out, RollerPad.Pushes.WITH_THE_LIFT);
                });
    }

    private static boolean solves(LeverFrame frame, ChainPath path) {
        try {
            frame.over(path);
            return true;
        } catch (Refusal refusal) {
            return false;
        }
    }
}
