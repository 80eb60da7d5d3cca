package counterpull.engine.load;

import counterpull.engine.Constants;
import counterpull.engine.motion.ChainPath;
import org.junit.jupiter.api.Test;

class DeadWeightTest {
    @Test
    void balancesPower() {
        RandomLimb random = new RandomLimb(7);
        for (int trial = 0; trial < 40; trial++) {
            ChainPath path = random.next();
            DeadWeight weight = new DeadWeight("weight", random.point(path), Loaded.with(random.between(0, 5)));
            PowerBalance.check(
                    weight, new PowerBalance.Setting(path, Constants.STANDARD_GRAVITY, random.between(0, 30)));
        }
    }
}
