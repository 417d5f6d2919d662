package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Work that is begun before its result is needed. */
class AheadTest {
    @Test
    void isDoneOnceByWhoeverComesFirst() {
        AtomicInteger done = new AtomicInteger();
        List<Ahead<Integer>> all = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            int number = i;
            all.add(
                    Ahead.of(
                            () -> {
                                done.incrementAndGet();
                                return number;
                            }));
        }

        Ahead.inTurn("some", all);
        Ahead.twoAtOnce(all);

        for (int i = 0; i < all.size(); i++) {
            assertThat(all.get(i).get()).isEqualTo(i);
        }
        assertThat(done).hasValue(500);
    }

    @Test
    void goesOnBesideTheCaller() throws InterruptedException {
        CountDownLatch asked = new CountDownLatch(1);
        CountDownLatch begun = new CountDownLatch(1);

        Ahead<String> ahead =
                Ahead.begin(
                        "beside",
                        () -> {
                            begun.countDown();
                            asked.await();
                            return Thread.currentThread().getName();
                        });

        begun.await();
        asked.countDown();
        assertThat(ahead.get()).isEqualTo("beside");
    }

    @Test
    void whatItThrowsIsMetByAllWhoAsk() {
        Ahead<String> wrong =
                Ahead.of(
                        () -> {
                            throw new IllegalArgumentException("wrong");
                        });
        Ahead<String> fatal =
                Ahead.of(
                        () -> {
                            throw new StackOverflowError("deep");
                        });
        Ahead<String> right = Ahead.of(() -> "right");

        assertThatThrownBy(() -> Ahead.twoAtOnce(List.of(wrong, fatal, right)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(wrong::get)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("wrong");
        assertThatThrownBy(fatal::get).isInstanceOf(StackOverflowError.class);
        assertThat(right.get()).isEqualTo("right");
    }

    @Test
    void interruptionOfTheCallerIsKeptForItToSee() {
        Thread.currentThread().interrupt();

        assertThat(Ahead.of(() -> "done").get()).isEqualTo("done");

        assertThat(Thread.interrupted()).isTrue();
    }
}
