package boreledger.station.keeping;

import boreledger.drivers.file.FileProblem;
import boreledger.station.ledger.ChainRow;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.Imported;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.ImportNumbers;
import boreledger.station.ledger.ImportNumbers.Stretch;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.Ledger.Adding;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;

/**
 * Brings the entries of another ledger's export into a ledger, bodies and hashes as they are. The
 * whole file is read and its chain followed before the first entry is written, and what is new goes
 * in all at once or not at all.
 *
 * @param file the export
 * @param who the person who does it; null when not known
 */
public record Import(Path file, String who, Clock clock) {
  /**
   * What was brought in.
   *
   * @param ledger the other ledger's id
   * @param head its head, as the export has it
   * @param added how many of its entries are new; 0 when all were there
   * @param entries how many of its entries are there now
   * @param sessions how many sessions are new
   * @param readings how many readings are new
   * @param fromOthers how many of the new entries it has itself imported; they are kept with the
   *     rest, but sessions among them are not read here
   * @param opening the number of the entry that opens the import; null when nothing was new
   */
  public record Report(
      String ledger,
      String head,
      long added,
      long entries,
      long sessions,
      long readings,
      long fromOthers,
      Long opening) {
    /** In a sentence or two. */
    public String words() {
      if (added == 0) {
        return "Nothing new: all " + entries + " entries of ledger " + ledger + " are here.";
      }
      String words =
          String.format(
              Locale.ROOT,
              "Imported %d entries of ledger %s with %d sessions and %d readings, from entry %d on.",
              added,
              ledger,
              sessions,
              readings,
              opening);
      return fromOthers == 0
          ? words
          : words
              + " "
              + fromOthers
              + " of them it has from other ledgers: import those ledgers' own exports to read them.";
    }
  }

  /**
   * Looks whether the file is an export of a ledger that can be taken over.
   *
   * @throws FileProblem if it is not, or its chain is broken
   */
  public void check(Progress progress) throws FileProblem, LedgerFault {
    try (ExportFile export = ExportFile.open(file)) {
      ForeignEntries foreign = new ForeignEntries(export, 0);
      export.follow(
          row -> {
            foreign.look(row);
            progress.passed(row.seq());
          });
    }
  }

  /**
   * Brings in what is new.
   *
   * @throws FileProblem if the file is no export, its chain is broken, or it tells another history
   *     than what was imported from the same ledger before; nothing is written then
   */
  public Report into(Ledger ledger, Progress progress) throws FileProblem, LedgerFault {
    ImportNumbers numbers;
    ForeignEntries foreign;
    ExportFile.Header told;
    try (ExportFile export = ExportFile.open(file);
        LedgerView view = ledger.view()) {
      told = export.told();
      List<Entry> imports = view.imports();
      numbers = ImportNumbers.of(imports, told.ledger());
      foreign = new ForeignEntries(export, numbers.last());
      SameHistory history = SameHistory.of(view, told, numbers, file);
      export.follow(
          row -> {
            foreign.look(row);
            history.look(row);
            progress.passed(row.seq());
          });
      if (history.isOwn() || told.entries() <= numbers.last()) {
        return report(told, foreign, Math.max(told.entries(), numbers.last()), null);
      }
    }
    long opening = ledger.headSeq() + 1;
    Stretch stretch = new Stretch(opening, numbers.last() + 1, told.entries() - numbers.last());
    ledger.appendAll(adding -> write(adding, told, stretch, numbers.with(stretch), progress));
    return report(told, foreign, told.entries(), opening);
  }

  private void write(
      Adding adding,
      ExportFile.Header told,
      Stretch stretch,
      ImportNumbers numbers,
      Progress progress)
      throws FileProblem, LedgerFault {
    adding.add(
        new Imported(
            told.ledger(), told.head(), stretch.first(), stretch.entries(), clock.instant(), who));
    try (ExportFile export = ExportFile.open(file)) {
      if (!export.told().equals(told)) {
        throw export.problem("the file was changed while it was read");
      }
      export.follow(
          row -> {
            if (row.seq() >= stretch.first()) {
              adding.add(wrapped(row, stretch.opening(), numbers));
              progress.passed(row.seq());
            }
          });
    }
  }

  private static ImportedEntry wrapped(ChainRow row, long opening, ImportNumbers numbers)
      throws LedgerFault {
    Long session = row.session();
    return new ImportedEntry(
        opening,
        session == null ? null : Long.valueOf(numbers.own(session)),
        row.seq(),
        row.hash().toHex(),
        row.body());
  }

  private static Report report(
      ExportFile.Header told, ForeignEntries foreign, long entries, Long opening) {
    boolean none = opening == null;
    return new Report(
        told.ledger(),
        told.head(),
        none ? 0 : entries - foreign.after(),
        entries,
        none ? 0 : foreign.newSessions(),
        none ? 0 : foreign.newReadings(),
        none ? 0 : foreign.fromOthers(),
        opening);
  }
}
