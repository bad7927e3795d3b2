package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class GaugingDeskTest {
  private final List<String> failures = new CopyOnWriteArrayList<>();
  private final GaugingDesk desk = new GaugingDesk(event -> {}, failures::add);

  @Test
  void whatNobodyExpectedIsToldAtOnceAndGivenToWhoeverAsksForTheResults() {
    desk.begin(
        play -> {
          throw new IllegalStateException("a depth of -1 mm");
        });

    Exception thrown = assertThrows(IllegalStateException.class, desk::lastResults);
    assertEquals("a depth of -1 mm", thrown.getMessage());
    assertEquals(
        List.of(
            "gauging was given up, java.lang.IllegalStateException: a depth of -1 mm;"
                + " start again to go on with it"),
        failures);
  }

  @Test
  void whatAPersonCanMendIsToldInItsOwnWords() {
    desk.begin(
        play -> {
          throw new UsageProblem("--port is missing");
        });

    assertThrows(UsageProblem.class, desk::lastResults);
    assertEquals(List.of("--port is missing"), failures);
  }

  @Test
  void whileOneThingIsGaugedNothingElseBegins() throws Exception {
    CountDownLatch done = new CountDownLatch(1);
    assertTrue(
        desk.begin(
            play -> {
              done.await();
              return null;
            }));

    assertTrue(desk.isBusy());
    assertFalse(desk.begin(play -> null));

    done.countDown();
    assertThrows(NullPointerException.class, desk::lastResults);
    assertEquals(List.of(), failures);
  }

  @Test
  void withoutAnyGaugingThereAreNoResults() throws Exception {
    assertEquals(Optional.empty(), desk.lastResults());
  }
}
