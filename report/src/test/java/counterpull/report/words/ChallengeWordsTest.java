package counterpull.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.Profile;
import counterpull.report.Exercises;
import counterpull.report.table.UnitSet;
import org.junit.jupiter.api.Test;

class ChallengeWordsTest {
    private static ChallengeWords words(Profile profile) {
        return new ChallengeWords(profile, UnitSet.METRIC);
    }

    private static ChallengeWords cuff(String chosen) {
        String yaml = Exercises.text("knee-extension-cuff").replace("chosen: 6 kg", "chosen: " + chosen);
        return words(ExerciseProfile.of(Exercises.scenario(yaml).task()));
    }

    @Test
    void rangesByAngleAndByTravel() {
        assertThat(cuff("6 kg").range()).isEqualTo("knee flexion from 90° to 10°");
        assertThat(words(Exercises.profile("bench-press-bar")).range())
                .matches("travel from 0\u00A0cm to [0-9.]+\u00A0cm");
        assertThat(new ChallengeWords(Exercises.profile("bench-press-bar"), UnitSet.IMPERIAL).range())
                .matches("travel from 0\u00A0in to [0-9.]+\u00A0in");
    }

    @Test
    void anglesBelowZeroHaveATrueMinusSign() {
        assertThat(words(Exercises.profile("calf-press-rail")).range()).isEqualTo("dorsiflexion from 10° to −20°");
    }

    @Test
    void aCuffIsHardestAtTheTopAndSaysHowSureThatIs() {
        ExerciseProfile profile = Exercises.profile("knee-extension-cuff");
        int last = profile.positions() - 1;
        double effort = profile.effort(Joint.KNEE, Phase.LIFTING, last);
        String percent = Math.round(100 * effort) + "\u00A0%";
        assertThat(cuff("6 kg").headline())
                .isEqualTo("Left knee extension: " + percent + " of what it has, at knee flexion 10°");
        double factor = profile.limbs().get(0).bandFactor(Joint.KNEE, last);
        assertThat(cuff("6 kg").sureness())
                .isEqualTo("That is while lifting; " + Math.round(100 * effort / factor) + " to "
                        + Math.round(100 * effort * factor) + "\u00A0% within the strength's 90\u00A0% band.");
        assertThat(cuff("6 kg").hardest())
                .startsWith("Hardest: left knee extension, lifting, at knee flexion 10°: " + percent);
    }

    @Test
    void moreThanThereIsIsSaidPlainly() {
        assertThat(cuff("30 kg").headline()).startsWith("Too heavy as set: left knee extension, ");
        assertThat(cuff("30 kg").hardest()).endsWith("That is more than there is: as set, this cannot be done.");
        assertThat(cuff("30 kg").sureness()).contains("cannot be done").doesNotContain("low end");
        // 45 % at 6 kg of which about a third is the leg itself: 12 kg stays below 100 % with a band that reaches
        // beyond
        assertThat(cuff("12 kg").headline()).doesNotContain("Too heavy");
        assertThat(cuff("12 kg").sureness()).endsWith("at the low end of that band, this is more than there is.");
    }

    @Test
    void whatIsAskedSomewhereIsTheProfiles() {
        ExerciseProfile profile = Exercises.profile("knee-extension-cuff");
        double torque = profile.limbs().get(0).torque(Joint.KNEE, Phase.HELD, 50);
        double effort = profile.limbs().get(0).effort(Joint.KNEE, Phase.HELD, 50);
        assertThat(words(profile).asked(Phase.HELD, 50))
                .isEqualTo("left knee extension " + Math.round(10 * torque) / 10.0 + "\u00A0N·m, "
                        + Math.round(100 * effort) + "\u00A0% of what it has");
    }

    @Test
    void aLargerTorqueOfAStrengthThatIsNotKnownIsNotPassedOver() {
        ExerciseProfile profile = Exercises.profile("pulldown-cable");
        double torque = profile.limbs().get(0).torque(Joint.SHOULDER_SIDEWAYS, Phase.HELD, 0);
        assertThat(profile.effort(Joint.SHOULDER_SIDEWAYS, Phase.HELD, 0)).isNaN();
        assertThat(words(profile).asked(Phase.HELD, 0))
                .startsWith("left elbow extension ")
                .endsWith("; left shoulder adduction " + Math.round(10 * Math.abs(torque)) / 10.0
                        + "\u00A0N·m, of a strength that is not known here");
    }

    @Test
    void aJointThatIsAskedForBothActionsSaysSo() {
        assertThat(words(Exercises.profile("squat-bar")).joints())
                .anyMatch(words -> words.startsWith("Knee: most at the bottom; up to ")
                        && words.endsWith("; part of the range asks for knee flexion instead."))
                .noneMatch(words -> words.startsWith("Hip") && words.contains("instead"));
    }

    @Test
    void nextToNothingIsSaidAsSuch() {
        assertThat(words(Exercises.profile("straight-leg-raise-cuff")).joints())
                .contains("Ankle: next to nothing is asked.");
    }

    @Test
    void strengthThatIsNotKnownIsSaidFromWhereToWhere() {
        ExerciseProfile profile = Exercises.profile("squat-bar");
        int first = 0;
        while (Double.isNaN(profile.effort(Joint.ANKLE, Phase.LIFTING, first))) {
            first++;
        }
        assertThat(first).isBetween(1, profile.positions() - 1);
        String to = ChallengeWordsTest.words(profile).at(first - 1).replace("knee flexion ", "");
        assertThat(words(profile).unknown())
                .containsExactly("Strength of the ankle is not known from knee flexion 90° to " + to + ".");
        assertThat(cuff("6 kg").unknown()).isEmpty();
        assertThat(words(Exercises.profile("shoulder-raise-sideways-dumbbell")).unknown())
                .contains("Strength of the elbow is not known anywhere in this range.");
    }

    @Test
    void pressesToo() {
        assertThat(words(Exercises.anyProfile("leg-press-stack-plate")).headline())
                .contains(" of what it has, at knee flexion ");
    }
}
