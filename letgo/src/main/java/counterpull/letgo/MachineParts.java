package counterpull.letgo;

import counterpull.engine.Refusal;
import counterpull.engine.load.Cable;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Carrier;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.LeverPath;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.load.OnGuidedMass;
import counterpull.engine.load.OnLever;
import counterpull.engine.load.RailFrame;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseProfile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Takes an exercise apart into its machines, each with all that is on it, and lets each of them go. */
final class MachineParts {
    private final ExerciseProfile profile;
    private final ChainPath path;
    private final int[] positions;
    private final List<MachineReleases> machines = new ArrayList<>();
    private final List<LeftAlone> others = new ArrayList<>();

    MachineParts(ExerciseProfile profile) {
        this.profile = profile;
        path = profile.limbs().get(0).path();
        positions = Releases.positions(profile.positions(), ExerciseReleases.PLACES);
    }

    ExerciseReleases let() {
        Set<Carrier> done = new LinkedHashSet<>();
        for (Resistance resistance : resists()) {
            List<Carrier> carriers = carriers(resistance);
            for (Carrier carrier : carriers) {
                if (done.add(carrier)) {
                    part(carrier);
                }
            }
            if (resistance instanceof Cable cable) {
                cable(cable);
            } else if (carriers.isEmpty()) {
                others.add(new LeftAlone(resistance.words(), alone(resistance)));
            }
        }
        return new ExerciseReleases(machines, others);
    }

    private List<Resistance> resists() {
        return profile.task().exercise().resists();
    }

    private static LeftAlone.Why alone(Resistance resistance) {
        if (resistance instanceof StretchLine) {
            return LeftAlone.Why.SNAPS_BACK;
        }
        return resistance instanceof MeasuredProfile ? LeftAlone.Why.MASS_NOT_MEASURED : LeftAlone.Why.FALLS_FREELY;
    }

    private static List<Carrier> carriers(Resistance resistance) {
        if (resistance instanceof Lever lever) {
            return List.of(lever.frame());
        }
        if (resistance instanceof CamStack cam) {
            return List.of(cam.frame());
        }
        if (resistance instanceof GuidedMass mass) {
            return List.of(mass.frame());
        }
        List<Carrier> carriers = new ArrayList<>();
        if (resistance instanceof StretchLine line) {
            carrier(line.from()).ifPresent(carriers::add);
            carrier(line.to()).ifPresent(carriers::add);
        }
        return carriers;
    }

    private static Optional<Carrier> carrier(LineEnd end) {
        if (end instanceof OnLever peg) {
            return Optional.of(peg.frame());
        }
        return end instanceof OnGuidedMass peg ? Optional.of(peg.frame()) : Optional.empty();
    }

    private void part(Carrier carrier) {
        if (carrier instanceof LeverFrame frame) {
            lever(frame);
        } else if (carrier instanceof RailFrame frame) {
            carriage(frame);
        }
    }

    private void lever(LeverFrame frame) {
        LeverPath lever = frame.over(path);
        double[] place = new double[path.positions()];
        double[] slope = new double[path.positions()];
        for (int i = 0; i < place.length; i++) {
            place[i] = lever.sense() * (lever.angle(i) - lever.angle(0));
            slope[i] = lever.sense() * lever.slope(i);
        }
        Track track = new Track(place, slope);
        double reach = lever.contact(0).minus(frame.pivot()).norm();
        onward(frame, track)
                .ifPresent(travel -> let(
                        frame,
                        new LeverRod(frame, lever.angle(0), lever.sense(), travel),
                        track,
                        new Told(MachineReleases.Kind.LEVER, reach)));
    }

    private void carriage(RailFrame frame) {
        Vec toward = frame.over(path).toward();
        PointTrack point = path.track(frame.at());
        Track track = along(point, toward);
        double angle = Math.atan2(toward.y(), toward.x());
        onward(frame, track)
                .ifPresent(travel -> let(
                        frame,
                        new RailRod(frame, point.at(0), angle, travel),
                        track,
                        new Told(MachineReleases.Kind.CARRIAGE, 1)));
    }

    private static Track along(PointTrack point, Vec toward) {
        double[] place = new double[point.positions()];
        double[] slope = new double[point.positions()];
        for (int i = 0; i < place.length; i++) {
            place[i] = toward.dot(point.at(i).minus(point.at(0)));
            slope[i] = toward.dot(point.slope(i));
        }
        return new Track(place, slope);
    }

    private Optional<Double> onward(Carrier carrier, Track track) {
        if (!track.onward()) {
            others.add(new LeftAlone(names(carrier), LeftAlone.Why.TURNS_BACK));
            return Optional.empty();
        }
        return Optional.of(track.highest());
    }

    /**
     * What is told of a machine besides what it does.
     *
     * @param kind what it is
     * @param reach of its contact
     */
    private record Told(MachineReleases.Kind kind, double reach) {}

    private void let(Carrier carrier, Rod rod, Track track, Told told) {
        List<Resistance> carried = new ArrayList<>();
        for (Resistance resistance : on(carrier)) {
            rod.carry(resistance).ifPresent(carried::add);
        }
        if (carried.size() < on(carrier).size()) {
            others.add(new LeftAlone(names(carrier), LeftAlone.Why.TIED_TO_SOMETHING_LOOSE));
            return;
        }
        FreePart.Surroundings around = new FreePart.Surroundings(
                profile.task().exercise().motion().gravity(), profile.task().plates());
        try {
            let(new FreePart(rod, carried, around, Ends.Bottom.NOTHING), track, told, on(carrier));
        } catch (Refusal refusal) {
            others.add(new LeftAlone(names(carrier), LeftAlone.Why.NO_ANSWER_ON_THE_WAY));
        }
    }

    private void let(LoneMachine machine, Track track, Told told, List<Resistance> on) {
        List<String> names = on.stream().map(Resistance::words).distinct().toList();
        if (machine.inertia(0) - Math.abs(machine.rubbedInertia(0)) <= 0) {
            others.add(new LeftAlone(String.join(", ", names), LeftAlone.Why.WITHOUT_MASS));
            return;
        }
        machines.add(new MachineReleases(
                names,
                told.kind(),
                told.reach(),
                Arrays.stream(positions).boxed().toList(),
                track.releases(machine, positions, profile.course())));
    }

    private List<Resistance> on(Carrier carrier) {
        return resists().stream()
                .filter(resistance -> carriers(resistance).contains(carrier))
                .toList();
    }

    private String names(Carrier carrier) {
        return String.join(
                ", ", on(carrier).stream().map(Resistance::words).distinct().toList());
    }

    private void cable(Cable cable) {
        Track track = line(cable);
        if (track.highest() <= Track.STANDSTILL) {
            others.add(new LeftAlone(cable.words(), LeftAlone.Why.TURNS_BACK));
            return;
        }
        FreeLine line = new FreeLine(cable.line(), profile.task().plates(), track.highest());
        let(line, track, new Told(MachineReleases.Kind.LINE, 1), List.of(cable));
    }

    /** Line between pulley and handle beyond its shortest: l′ = r·r′/l with r from the pulley to the handle. */
    private Track line(Cable cable) {
        PointTrack handle = path.track(cable.at());
        double[] place = new double[path.positions()];
        double[] slope = new double[path.positions()];
        for (int i = 0; i < place.length; i++) {
            Vec from = handle.at(i).minus(cable.pulley());
            place[i] = from.norm();
            slope[i] = from.dot(handle.slope(i)) / place[i];
        }
        double shortest = Arrays.stream(place).min().orElseThrow();
        for (int i = 0; i < place.length; i++) {
            place[i] -= shortest;
        }
        return new Track(place, slope);
    }
}
