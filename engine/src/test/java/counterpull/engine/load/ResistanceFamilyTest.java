package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Every member of the family has its own contract test, named after it. */
class ResistanceFamilyTest {
    @Test
    void everyMemberHasItsContractTest() throws ReflectiveOperationException {
        assertThat(Resistance.class.getPermittedSubclasses()).isNotEmpty();
        for (Class<?> member : Resistance.class.getPermittedSubclasses()) {
            Class<?> test = Class.forName(member.getName() + "Test");
            assertThat(test.getDeclaredMethod("balancesPower"))
                    .as(test.getName())
                    .isNotNull();
        }
    }
}
