package counterpull.scenario.content;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.SegmentTable;
import counterpull.engine.body.Sex;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.profile.Limb;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import java.util.List;

/**
 * The person of a scenario.
 *
 * @param name what the card calls them
 * @param physique sex, age (years), stature (m) and mass (kg)
 * @param table the published table of body segments
 * @param limbs left, right or both, left first
 */
public record Client(String name, Build physique, SegmentTable table, List<ClientLimb> limbs) {
    private static final WorkingRange ANY_RANGE = new WorkingRange(1, 0, 1);
    private static final double YOUNGEST_PUBLISHED = 18;
    private static final double OLDEST_PUBLISHED = 110;

    public Client {
        limbs = List.copyOf(limbs);
    }

    /**
     * What the published tables go by.
     *
     * @param sex selects rows
     * @param age years
     * @param stature m
     * @param mass kg
     */
    public record Build(Sex sex, double age, double stature, double mass) {}

    /** One limb as the engine takes it, with a share of the outer load above 0 to 1 and the range that it works over. */
    public Limb limb(ClientLimb limb, double share, WorkingRange range) {
        return new Limb(
                limb.side(),
                body(limb),
                share,
                range,
                limb.jointLimits().ranges(),
                limb.strength().curves(published(), limb.side()));
    }

    /** Lengths and masses of one side. */
    public BodySide body(ClientLimb limb) {
        return new Anthropometry(table, physique.sex(), physique.stature(), physique.mass(), limb.measured()).side();
    }

    /** Refuses a limb that the engine could not take. */
    public void check(ClientLimb limb) {
        limb(limb, 1, limb.ranges().press().orElse(ANY_RANGE));
    }

    /** Published strength; none where the person's age lies outside what is published. */
    private PublishedStrength published() {
        if (physique.age() < YOUNGEST_PUBLISHED || physique.age() > OLDEST_PUBLISHED) {
            return new PublishedStrength(LimbStrength.none());
        }
        return new PublishedStrength(LimbStrength.published(
                new Physique(physique.sex(), physique.age(), physique.mass(), physique.stature())));
    }
}
