package boreledger.station.ledger;

import boreledger.drivers.capture.Measure;
import boreledger.station.plan.Position;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.time.Instant;
import java.util.List;

/**
 * What an entry says. Its JSON has {@code kind} first, then the components by their names in snake
 * case, null where nothing is known.
 *
 * <p>A session is named by the number of the entry that opened it. {@code t_s} is the session's
 * monotonic clock in seconds since it was opened, {@code wall} the clock on the wall at that
 * moment.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
  @JsonSubTypes.Type(name = "ledger", value = EntryBody.LedgerMade.class),
  @JsonSubTypes.Type(name = "document", value = EntryBody.Document.class),
  @JsonSubTypes.Type(name = "session", value = EntryBody.SessionOpened.class),
  @JsonSubTypes.Type(name = "resumed", value = EntryBody.SessionResumed.class),
  @JsonSubTypes.Type(name = "reading", value = EntryBody.ReadingTaken.class),
  @JsonSubTypes.Type(name = "refused", value = EntryBody.SampleRefused.class),
  @JsonSubTypes.Type(name = "line-fault", value = EntryBody.LineBroke.class),
  @JsonSubTypes.Type(name = "ended", value = EntryBody.SessionEnded.class),
  @JsonSubTypes.Type(name = "imported", value = EntryBody.Imported.class),
  @JsonSubTypes.Type(name = "imported-entry", value = EntryBody.ImportedEntry.class),
})
public sealed interface EntryBody {
  /** The word that marks a ledger's first entry. */
  String FORMAT = "boreledger-ledger/1";

  /**
   * The first entry of every ledger.
   *
   * @param id 16 random bytes in hexadecimal, so that no two ledgers begin alike
   */
  record LedgerMade(String format, String id, Instant wall) implements EntryBody {}

  /**
   * A file that readings depend on, kept whole, once for each content.
   *
   * @param role {@code job}, {@code gauge} or {@code table}
   */
  record Document(String role, String name, String sha256, String text) implements EntryBody {}

  /**
   * A session begins.
   *
   * @param job the job file's content hash
   * @param gauge the gauge profile's content hash
   * @param tables the content hashes of the tables that computations fall back on
   * @param ring the ring's name; null for bores
   * @param line where the bytes come from, in words
   * @param program the program's version, whose rules compute
   */
  record SessionOpened(
      String jobName,
      String job,
      String gauge,
      List<String> tables,
      Measure measure,
      String ring,
      Instant wall,
      Double settingTempC,
      Double blockTempC,
      String line,
      String program)
      implements EntryBody {}

  /**
   * A session goes on after the program was started again.
   *
   * @param settingTempC the setting ring's temperature from now on; null for the one before
   * @param blockTempC the block's temperature from now on; null for the one before
   */
  record SessionResumed(
      long session, double tS, Instant wall, Double settingTempC, Double blockTempC, String line)
      implements EntryBody {}

  /**
   * A reading at a position.
   *
   * @param valueMm the gauge's own value in millimetres
   * @param standardUncertaintyMm as the pick rule gave it; null when one sample cannot say
   * @param rule the pick rule
   * @param setting the entry of the setting ring reading in force; null where there is none
   * @param samples what it was picked from, raw bytes included
   */
  record ReadingTaken(
      long session,
      Position position,
      double tS,
      Instant wall,
      double valueMm,
      Double standardUncertaintyMm,
      String rule,
      Long setting,
      List<KeptSample> samples,
      List<String> cautions)
      implements EntryBody {}

  /**
   * Something came that became no reading.
   *
   * @param raw the bytes in hexadecimal
   * @param valueMm the value, when the bytes did decode; else null
   * @param why in one plain clause
   */
  record SampleRefused(
      long session, double tS, Instant wall, String raw, Double valueMm, String why)
      implements EntryBody {}

  /** The line broke while the session was open. */
  record LineBroke(long session, double tS, Instant wall, String why) implements EntryBody {}

  /** The plan of a session is done. */
  record SessionEnded(long session, double tS, Instant wall) implements EntryBody {}

  /**
   * Entries of another ledger follow, each in an {@link ImportedEntry} of its own.
   *
   * @param ledger the other ledger's id
   * @param head the hash of the last entry that follows, in hexadecimal
   * @param first the number of the first one in the other ledger
   * @param entries how many follow
   * @param wall when they were brought in
   * @param who the person; null when not known
   */
  record Imported(String ledger, String head, long first, long entries, Instant wall, String who)
      implements EntryBody {}

  /**
   * An entry of another ledger, with its proof.
   *
   * @param imported the {@link Imported} entry that it belongs to
   * @param session the number that its session's opening has in this ledger; null for what belongs
   *     to no session
   * @param number its number in the other ledger
   * @param hash its hash there, in hexadecimal
   * @param body its body there, character by character
   */
  record ImportedEntry(long imported, Long session, long number, String hash, String body)
      implements EntryBody {}

  /**
   * A sample as it is kept.
   *
   * @param raw the frame's bytes in hexadecimal, delimiters included
   * @param valueMm what it decoded to, in millimetres
   */
  record KeptSample(double tS, String raw, double valueMm) {}
}
