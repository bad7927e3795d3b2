package boreledger.station.bench.ledger;

import boreledger.drivers.profile.Reads;
import boreledger.station.app.EntryLine;
import boreledger.station.app.LedgerBook;
import boreledger.station.app.LedgerBook.Manner;
import boreledger.station.app.LedgerPage;
import boreledger.station.app.OpenedReading;
import boreledger.station.app.SessionLine;
import boreledger.station.app.SessionStory;
import boreledger.station.bench.words.Lengths;
import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What was said in a session, and the one reading that is opened. */
public final class SessionModel {
  /** How many entries are listed at once. */
  static final int ENTRIES = 500;

  private static final Manner PLAIN = new Manner(DisplayUnit.MM, Reads.SIZE);

  private final LedgerAround around;
  private final Asking listing;
  private final Asking opening;
  private final List<Entry> read = new ArrayList<>();
  private final ObservableList<EntryLine> lines = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<EntryLine> linesToSee =
      FXCollections.unmodifiableObservableList(lines);
  private final ReadOnlyBooleanWrapper more = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyObjectWrapper<EntryWords> words = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<ReadingFacts> facts = new ReadOnlyObjectWrapper<>();
  private final CorrectionModel correction;
  private final AboutModel about;
  private SessionLine session;
  private OpenedReading opened;
  private EntryLine refused;
  private Manner manner = PLAIN;

  /** What is listed, and how its values are shown. */
  private record Listed(LedgerPage<Entry> page, Manner manner) {}

  SessionModel(LedgerAround around, Consumer<String> failed) {
    this.around = around;
    listing = new Asking(around.reading(), around.around().screen(), failed);
    opening = new Asking(around.reading(), around.around().screen(), failed);
    Reason reason = new Reason();
    correction = new CorrectionModel(around, reason, this::corrected);
    about = new AboutModel(around, reason, this::amended);
    around.around().appearance().unit().subscribe(unit -> speak());
  }

  /** Lists the last entries of a session; an opened reading of it stays open. */
  void show(SessionLine shown) {
    if (session == null || session.id() != shown.id()) {
      clear();
    }
    session = shown;
    list(LedgerBook.END);
  }

  /** Shows nothing. */
  void clear() {
    listing.forget();
    session = null;
    manner = PLAIN;
    read.clear();
    lines.clear();
    more.set(false);
    close();
  }

  /** Lists earlier entries as well. */
  public void showEarlier() {
    if (session != null && !read.isEmpty()) {
      list(read.get(0).seq());
    }
  }

  /** Opens a reading or a refused sample; of anything else there is no more to see. */
  public void open(EntryLine line) {
    if (line == null) {
      return;
    } else if (EntryWords.isReading(line)) {
      correction.clear();
      about.close();
      open(line.entry().seq());
    } else if (EntryWords.isRefused(line)) {
      close();
      refused = line;
      speak();
    }
  }

  /** Opens what is known of the session itself. */
  public void openAbout() {
    if (session != null) {
      close();
      about.open(session.id());
    }
  }

  /** Closes what is opened. */
  public void close() {
    opening.forget();
    opened = null;
    refused = null;
    facts.set(null);
    correction.clear();
    about.close();
  }

  /** The entries listed, oldest first. */
  public ObservableList<EntryLine> lines() {
    return linesToSee;
  }

  /** Whether the session has earlier entries than those listed. */
  public ReadOnlyBooleanProperty more() {
    return more.getReadOnlyProperty();
  }

  /** How entries are put into words. */
  public ReadOnlyObjectProperty<EntryWords> words() {
    return words.getReadOnlyProperty();
  }

  /** The opened reading in words; null while none is. */
  public ReadOnlyObjectProperty<ReadingFacts> facts() {
    return facts.getReadOnlyProperty();
  }

  /** What is known of the session itself. */
  public AboutModel about() {
    return about;
  }

  /** Correcting the opened reading. */
  public CorrectionModel correction() {
    return correction;
  }

  private void list(long before) {
    LedgerBook book = around.book();
    SessionLine asked = session;
    listing.ask(
        () -> new Listed(book.entries(asked.id(), before, ENTRIES), book.manner(asked.opened())),
        listed -> {
          if (before == LedgerBook.END) {
            read.clear();
          }
          read.addAll(0, listed.page().lines());
          more.set(listed.page().more());
          manner = listed.manner();
          speak();
          lines.setAll(SessionStory.of(read));
        });
  }

  private void open(long entry) {
    LedgerBook book = around.book();
    opening.ask(
        () -> book.reading(entry),
        reading -> {
          opened = reading;
          refused = null;
          correction.of(reading);
          speak();
        });
  }

  private void corrected(long entry) {
    around.changed().run();
    if (session != null) {
      list(LedgerBook.END);
      open(entry);
    }
  }

  private void amended() {
    around.changed().run();
    if (session != null) {
      list(LedgerBook.END);
      about.open(session.id());
    }
  }

  private void speak() {
    DisplayUnit chosen = around.around().appearance().unit().get();
    words.set(
        new EntryWords(
            new Lengths(chosen == null ? manner.unit() : chosen),
            manner.reads(),
            new Moments(around.clock().getZone())));
    if (opened != null) {
      facts.set(ReadingFacts.of(opened, words.get()));
    } else if (refused != null) {
      facts.set(ReadingFacts.ofRefused(refused, words.get()));
    }
  }
}
