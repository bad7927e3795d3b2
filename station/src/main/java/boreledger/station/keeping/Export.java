package boreledger.station.keeping;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.ChainReader;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;

/**
 * Hands out what a ledger holds: its readings as CSV, or all of it as JSON with the chain.
 *
 * @param ledger the ledger's file
 * @param format what is wanted
 * @param choice which sessions; JSON has all of them
 */
public record Export(Path ledger, Format format, Choice choice) {
  /** What can be wanted. */
  public enum Format {
    /** Readings, one to a line. */
    CSV,
    /** The chain, whole. */
    JSON
  }

  /**
   * What was handed out.
   *
   * @param out the file; null for standard output
   * @param format {@code csv} or {@code json}
   * @param readings lines of CSV without the header; null for JSON
   * @param entries entries of the chain; null for CSV
   * @param ledgerHead the hash of the ledger's last entry when the export began
   */
  public record Exported(
      String out, String format, Long readings, Long entries, String ledgerHead) {
    /** In a sentence. */
    public String words() {
      String what = readings == null ? entries + " entries" : readings + " readings";
      return "Exported " + what + (out == null ? "" : " into " + out) + ", head " + ledgerHead;
    }
  }

  /** Checks that the choice fits the format. */
  public Export {
    if (format == Format.JSON && !choice.isAll()) {
      throw new IllegalArgumentException("a chain is exported whole");
    }
  }

  /**
   * Exports into a new file.
   *
   * @param replace whether one that is there may be overwritten
   */
  public Exported into(Path out, boolean replace, Progress progress)
      throws LedgerFault, UsageProblem, FileProblem {
    try (FreshFile file = FreshFile.at(out, replace, ledger)) {
      Exported exported;
      try (Writer writer = openedLate(file)) {
        exported = to(writer, out.toString(), progress);
      } catch (IOException e) {
        throw file.unwritable(e);
      }
      file.put();
      return exported;
    }
  }

  /** Exports into something that is open already, such as standard output. */
  public Exported to(Writer out, Progress progress) throws LedgerFault, UsageProblem, IOException {
    return to(out, null, progress);
  }

  // A ledger that is not there is told first.
  private Writer openedLate(FreshFile file) throws LedgerFault, FileProblem {
    LedgerView.open(ledger).close();
    return file.writer();
  }

  private Exported to(Writer out, String name, Progress progress)
      throws LedgerFault, UsageProblem, IOException {
    try (LedgerView view = LedgerView.open(ledger);
        ChainReader chain = ChainReader.open(ledger)) {
      String head = chain.headHash().toHex();
      if (format == Format.CSV) {
        long readings = CsvExport.write(view, choice, out, progress);
        return new Exported(name, "csv", readings, null, head);
      }
      JsonExport.write(chain, view.id(), out, progress);
      return new Exported(name, "json", null, chain.entries(), head);
    }
  }
}
