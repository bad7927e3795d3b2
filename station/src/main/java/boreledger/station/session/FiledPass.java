package boreledger.station.session;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.Filed;
import boreledger.station.ledger.EntryBody.Withdrawn;
import java.util.List;
import java.util.TreeMap;

/**
 * A pass with the file that counts.
 *
 * @param seq its entry's number
 */
public record FiledPass(long seq, Filed pass) {
  /**
   * The passes that count among what was said of filing, in the order they were noted. One that
   * cannot be a pass is left out here; whoever audits the ledger hears of it.
   *
   * @param said the entries that note passes or withdraw them, in any order
   */
  public static List<FiledPass> counting(List<Entry> said) {
    TreeMap<Long, FiledPass> passes = new TreeMap<>();
    for (Entry entry : said) {
      if (entry.body() instanceof Filed pass && isReadable(pass)) {
        passes.put(entry.seq(), new FiledPass(entry.seq(), pass));
      }
    }
    for (Entry entry : said) {
      if (entry.body() instanceof Withdrawn withdrawn) {
        passes.remove(withdrawn.entry());
      }
    }
    return List.copyOf(passes.values());
  }

  private static boolean isReadable(Filed pass) {
    return pass.turns() > 0
        && PassCheck.gapMm(pass.beforeMm()).isPresent()
        && PassCheck.gapMm(pass.afterMm()).isPresent();
  }
}
