package platekeep.client.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TickTest {

    @Test
    void whatSomeHaveGoesToAllThenToNoneThenStaysAsItWas() {
        Tick tick = new Tick("theme", "boats", 2, 5);
        assertThat(tick.getText()).isEqualTo("boats · 2 of 5");
        assertThat(tick.gives() || tick.takes()).isFalse();
        tick.doClick();
        assertThat(tick.gives()).isTrue();
        assertThat(tick.getText()).isEqualTo("boats · all");
        tick.doClick();
        assertThat(tick.takes()).isTrue();
        assertThat(tick.getText()).isEqualTo("boats · none");
        tick.doClick();
        assertThat(tick.gives() || tick.takes()).isFalse();
        assertThat(tick.getText()).isEqualTo("boats · 2 of 5");
    }

    @Test
    void whatAllHaveCanOnlyBeTakenAndWhatNoneHasOnlyGiven() {
        Tick all = new Tick("theme", "boats", 5, 5);
        assertThat(all.isSelected()).isTrue();
        all.doClick();
        assertThat(all.takes()).isTrue();
        all.doClick();
        assertThat(all.gives() || all.takes()).isFalse();

        Tick none = new Tick("theme", "boats", 0, 5);
        assertThat(none.isSelected()).isFalse();
        none.doClick();
        assertThat(none.gives()).isTrue();
        none.doClick();
        assertThat(none.gives() || none.takes()).isFalse();
    }
}
