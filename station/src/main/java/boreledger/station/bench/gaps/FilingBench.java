package boreledger.station.bench.gaps;

import boreledger.station.app.FilingBook;
import boreledger.station.app.FilingBook.Kept;
import boreledger.station.app.PassNote;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Told;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.draft.Kind;
import boreledger.station.job.draft.Numerals;
import boreledger.station.job.draft.Typed;
import boreledger.station.results.FiledResult;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * Filing one ring in passes. What is typed is noted in the ledger, in the background, and shown
 * when it stands there. Gaps are typed in the unit that is shown, unless they say their own.
 */
final class FilingBench {
  private static final String WHO = "filed-by";
  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
  // A gap computed from readings has no last digit of its own; a tenth of a micrometre loses none.
  private static final int GAUGED_DECIMALS = 4;

  private final Surroundings around;
  private final Memory memory;
  private final Function<Path, FilingBook> books;
  private final Runnable changed;
  private final StringProperty turns = new SimpleStringProperty("");
  private final StringProperty gapAfter = new SimpleStringProperty("");
  private final StringProperty who;
  private final StringProperty why = new SimpleStringProperty("");
  private final ReadOnlyObjectWrapper<FilingPage> page = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

  /**
   * A bench with nothing on it.
   *
   * @param books how passes are noted in a ledger
   * @param changed told when the ledger has something new
   */
  FilingBench(
      Surroundings around, Memory memory, Function<Path, FilingBook> books, Runnable changed) {
    this.around = around;
    this.memory = memory;
    this.books = books;
    this.changed = changed;
    who = new SimpleStringProperty(memory.get(WHO).orElse(""));
  }

  /** Shows a ring in a cylinder; null for none. */
  void show(FilingPage shown) {
    FilingPage before = page.get();
    boolean other =
        before == null
            || shown == null
            || !before.ring().equals(shown.ring())
            || before.cylinder() != shown.cylinder();
    if (other) {
      problem.set("");
    }
    page.set(shown);
  }

  /** What is shown; null while there is no ring. */
  ReadOnlyObjectProperty<FilingPage> page() {
    return page.getReadOnlyProperty();
  }

  /** How many turns were filed, as typed. */
  StringProperty turns() {
    return turns;
  }

  /** The gap after them, as typed. */
  StringProperty gapAfter() {
    return gapAfter;
  }

  /** Who files, as typed. */
  StringProperty who() {
    return who;
  }

  /** Why the last pass is struck, as typed. */
  StringProperty why() {
    return why;
  }

  /** Whether something is being written just now. */
  ReadOnlyBooleanProperty busy() {
    return busy.getReadOnlyProperty();
  }

  /** What stands in the way, in words; empty when nothing is known. */
  ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** Notes what was typed as a pass; what stands in the way is told. */
  void addPass() {
    FilingPage shown = page.get();
    if (busy.get() || shown == null) {
      return;
    }
    Typed filed = Numerals.read(Kind.COUNT, turns.get());
    Typed read = Numerals.read(Kind.LENGTH, gapAfter.get());
    if (!shown.canBeFiled()) {
      problem.set(GapsText.NO_GAP_YET.with());
    } else if (filed.numbers().isEmpty() || read.numbers().isEmpty()) {
      problem.set(GapsText.PASS_WRONG.with(example(shown)));
    } else if (who.get().isBlank()) {
      problem.set(LedgerText.NEEDS_WHO.with());
    } else {
      note(shown, filed.numbers().get(0), read);
    }
  }

  /** Strikes the last pass; it stays in the ledger. */
  void dropPass() {
    FiledResult last = page.get() == null ? null : page.get().lastFiled();
    if (busy.get() || last == null) {
      return;
    }
    String reason = why.get();
    String person = who.get();
    if (reason.isBlank()) {
      problem.set(GapsText.NEEDS_WHY.with());
    } else if (person.isBlank()) {
      problem.set(LedgerText.NEEDS_WHO.with());
    } else {
      FilingBook book = books.apply(around.workshop().get().ledger());
      write(() -> book.withdraw(last.entry(), reason, person), why);
    }
  }

  private void note(FilingPage shown, BigDecimal filed, Typed read) {
    try {
      PassNote pass =
          new PassNote(
              shown.job(),
              shown.cylinder(),
              shown.ring(),
              filed.intValueExact(),
              before(shown),
              afterMm(shown, read),
              who.get());
      FilingBook book = books.apply(around.workshop().get().ledger());
      write(() -> book.note(pass), turns, gapAfter);
    } catch (ArithmeticException e) {
      problem.set(GapsText.PASS_WRONG.with(example(shown)));
    }
  }

  /** A number that says no unit is in the unit that is shown. */
  private static BigDecimal afterMm(FilingPage shown, Typed read) {
    BigDecimal number = read.numbers().get(0);
    boolean inches = shown.lengths().unit() == DisplayUnit.IN && !read.hasUnit();
    return inches ? number.multiply(MM_PER_INCH).stripTrailingZeros() : number;
  }

  private static BigDecimal before(FilingPage shown) {
    BigDecimal now = BigDecimal.valueOf(shown.gapNowMm());
    boolean asRead = shown.lastFiled() != null && shown.lastFiled().sinceGauged();
    return asRead ? now : now.setScale(GAUGED_DECIMALS, RoundingMode.HALF_UP);
  }

  private static String example(FilingPage shown) {
    return shown.lengths().unit() == DisplayUnit.IN ? "0.0165" : "0.415";
  }

  private void write(Callable<Kept> work, StringProperty... done) {
    problem.set("");
    busy.set(true);
    memory.put(WHO, who.get().strip());
    around.background().execute(() -> tell(work, done));
  }

  private void tell(Callable<Kept> work, StringProperty... done) {
    String failed = null;
    try {
      work.call();
    } catch (RuntimeException e) {
      failed = e.toString();
    } catch (Exception e) {
      failed = Told.recorded(e.getMessage());
    }
    String why = failed;
    around.screen().execute(() -> over(why, done));
  }

  private void over(String failed, StringProperty... done) {
    busy.set(false);
    if (failed != null) {
      problem.set(failed);
      return;
    }
    for (StringProperty each : done) {
      each.set("");
    }
    changed.run();
  }
}
