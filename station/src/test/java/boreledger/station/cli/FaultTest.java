package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A slip of the program itself: whatever prints the answer throws what no command expects. */
class FaultTest {
  private static final List<String> CALL =
      List.of("figure", "gap-change", "--from", "96.03,96.02", "--to", "96.01,96.00");

  @Test
  void anUnexpectedExceptionIsOneLineWithoutAStackTrace() {
    Ran failed = failing(new IllegalStateException("out of\n  paper"));

    assertNotEquals(0, failed.status());
    assertNotEquals(1, failed.status(), "1 means done");
    assertEquals(1, failed.err().lines().count(), failed::toString);
    assertTrue(failed.err().contains("out of paper"), failed::toString);
    assertFalse(failed.err().contains("\tat "), failed::toString);
  }

  @Test
  void withTraceAnUnexpectedExceptionShowsWhereItArose() {
    Ran failed = failing(new IllegalStateException("out of paper"), "--trace");

    assertNotEquals(0, failed.status());
    assertTrue(failed.err().contains("\tat boreledger.station.cli."), failed::toString);
    String last = failed.err().lines().reduce((earlier, later) -> later).orElseThrow();
    assertTrue(last.contains("out of paper"), failed::toString);
  }

  @Test
  void anExceptionWithoutAWordIsToldByItsKind() {
    Ran failed = failing(new NullPointerException());

    assertEquals(1, failed.err().lines().count(), failed::toString);
    assertTrue(failed.err().contains("NullPointerException"), failed::toString);
  }

  @Test
  void anErrorOfTheMachineIsOneLineToo() {
    Ran failed = failing(new UnsatisfiedLinkError("no such library in the folder"));

    assertNotEquals(0, failed.status());
    assertNotEquals(1, failed.status(), "1 means done");
    assertEquals(1, failed.err().lines().count(), failed::toString);
    assertTrue(failed.err().contains("no such library in the folder"), failed::toString);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"results --ledger no-such.db", "figure tilt --bore -1 --depths 1@0,2@90,3@180"})
  void anExpectedProblemShowsItsPlaceOnlyWithTrace(String call) {
    List<String> words = new ArrayList<>(Arrays.asList(call.split(" ")));
    Ran plain = Ran.command(words.toArray());
    words.add("--trace");
    Ran traced = Ran.command(words.toArray());

    assertEquals(plain.status(), traced.status());
    assertFalse(plain.err().contains("\tat "), plain::toString);
    assertTrue(traced.err().contains("\tat boreledger."), traced::toString);
  }

  private static Ran failing(Throwable slip, String... more) {
    List<String> call = new ArrayList<>(CALL);
    call.addAll(List.of(more));
    return Ran.command(new Jammed(slip), new StringWriter(), call.toArray());
  }

  /** A printer that throws whatever it is asked to print. */
  private static final class Jammed extends PrintWriter {
    private final Throwable slip;

    Jammed(Throwable slip) {
      super(new StringWriter());
      this.slip = slip;
    }

    @Override
    public void write(String text, int start, int length) {
      if (slip instanceof RuntimeException exception) {
        throw exception;
      }
      throw (Error) slip;
    }
  }
}
