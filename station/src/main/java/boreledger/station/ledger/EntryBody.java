package boreledger.station.ledger;

import boreledger.drivers.capture.Measure;
import boreledger.station.plan.Position;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.time.Instant;
import java.util.ArrayList;
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
  @JsonSubTypes.Type(name = "taken-back", value = EntryBody.TakenBack.class),
  @JsonSubTypes.Type(name = "restored", value = EntryBody.Restored.class),
  @JsonSubTypes.Type(name = "chosen", value = EntryBody.Chosen.class),
  @JsonSubTypes.Type(name = "moved", value = EntryBody.Moved.class),
  @JsonSubTypes.Type(name = "amended", value = EntryBody.Amended.class),
  @JsonSubTypes.Type(name = "filed", value = EntryBody.Filed.class),
  @JsonSubTypes.Type(name = "withdrawn", value = EntryBody.Withdrawn.class),
  @JsonSubTypes.Type(name = "seal", value = EntryBody.Sealed.class),
  @JsonSubTypes.Type(name = "imported", value = EntryBody.Imported.class),
  @JsonSubTypes.Type(name = "imported-entry", value = EntryBody.ImportedEntry.class),
})
public sealed interface EntryBody {
  /** What is said within a session. */
  sealed interface OfSession extends EntryBody {
    /** The number of the entry that opened the session. */
    long session();

    /** The clock on the wall. */
    Instant wall();
  }

  /** What is said of passes with the file. */
  sealed interface OfFiling extends OfSession {}

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
   * @param program the program's version from now on; null for the one before
   */
  record SessionResumed(
      long session,
      double tS,
      Instant wall,
      Double settingTempC,
      Double blockTempC,
      String line,
      String program)
      implements OfSession {}

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
      implements OfSession {
    /**
     * The same reading for whoever needs only what it gave: its samples are many times as large.
     */
    public ReadingTaken withoutSamples() {
      return new ReadingTaken(
          session,
          position,
          tS,
          wall,
          valueMm,
          standardUncertaintyMm,
          rule,
          setting,
          List.of(),
          cautions);
    }

    /** The same reading somewhere else, with a caution that says so. */
    public ReadingTaken movedTo(Position place, String caution) {
      List<String> more = new ArrayList<>(cautions);
      more.add(caution);
      return new ReadingTaken(
          session,
          place,
          tS,
          wall,
          valueMm,
          standardUncertaintyMm,
          rule,
          setting,
          samples,
          List.copyOf(more));
    }
  }

  /**
   * Something came that became no reading.
   *
   * @param raw the bytes in hexadecimal
   * @param valueMm the value, when the bytes did decode; else null
   * @param why in one plain clause
   */
  record SampleRefused(
      long session, double tS, Instant wall, String raw, Double valueMm, String why)
      implements OfSession {}

  /** The line broke while the session was open. */
  record LineBroke(long session, double tS, Instant wall, String why) implements OfSession {}

  /** The plan of a session is done. */
  record SessionEnded(long session, double tS, Instant wall) implements OfSession {}

  /**
   * A reading no longer counts; it stays where it is.
   *
   * @param entry the reading's entry
   * @param tS the session's clock; null when it was done outside a sitting
   * @param why in one plain clause
   * @param who the person; null when not known
   * @param raw what the gauge sent as the gesture, in hexadecimal; null when it was no gesture
   * @param valueMm the gesture's value; null when it was no gesture
   */
  record TakenBack(
      long session,
      long entry,
      Double tS,
      Instant wall,
      String why,
      String who,
      String raw,
      Double valueMm)
      implements OfSession {}

  /** A reading that was taken back counts again. The components are those of {@link TakenBack}. */
  record Restored(
      long session,
      long entry,
      Double tS,
      Instant wall,
      String why,
      String who,
      String raw,
      Double valueMm)
      implements OfSession {}

  /**
   * A person chose what is gauged next, so that the plan's order does not hold from here on: by
   * skipping a position, or by going to one.
   *
   * @param position the next position
   * @param why in one plain clause
   * @param who the person; null when not known
   * @param raw what the gauge sent as the gesture, in hexadecimal; null when it was no gesture
   * @param valueMm the gesture's value; null when it was no gesture
   */
  record Chosen(
      long session,
      Position position,
      double tS,
      Instant wall,
      String why,
      String who,
      String raw,
      Double valueMm)
      implements OfSession {}

  /**
   * A reading was taken somewhere else than its entry says.
   *
   * @param entry the reading's entry
   * @param position where it was taken
   * @param tS the session's clock; null when it was done outside a sitting
   * @param who the person; null when not known
   */
  record Moved(
      long session, long entry, Position position, Double tS, Instant wall, String why, String who)
      implements OfSession {}

  /**
   * What a session was opened with is corrected: its temperatures from a moment of its clock on,
   * its job from beginning to end.
   *
   * @param tS the moment from which the temperatures hold
   * @param settingTempC the setting ring's; null for the one before
   * @param blockTempC the block's; null for the one before
   * @param job the content hash of the job that holds; null for the one before
   * @param wall when this was said
   * @param who the person; null when not known
   */
  record Amended(
      long session,
      double tS,
      Instant wall,
      Double settingTempC,
      Double blockTempC,
      String job,
      String why,
      String who)
      implements OfSession {}

  /**
   * A ring was filed in a pass between two readings of its end gap.
   *
   * @param session the latest one of the ring's gaps, or of its job when there is none
   * @param ring the ring's name in that session's job
   * @param turns turns of the crank or strokes
   * @param beforeMm the gap before it, in decimal text as a person read it, such as {@code 0.42}
   * @param afterMm the gap after it, likewise
   * @param who the person
   */
  record Filed(
      long session,
      int cylinder,
      String ring,
      int turns,
      String beforeMm,
      String afterMm,
      Instant wall,
      String who)
      implements OfFiling {}

  /**
   * A pass with the file does not count; it stays where it is.
   *
   * @param entry the {@link Filed} entry
   * @param why in one plain clause
   * @param who the person
   */
  record Withdrawn(long session, long entry, Instant wall, String why, String who)
      implements OfFiling {}

  /**
   * A person signed for everything up to an entry.
   *
   * @param ledger the ledger's id, as its first entry has it
   * @param entry the number of the last entry that is sealed
   * @param head that entry's hash, in hexadecimal
   * @param name the person
   * @param key the public key, 32 bytes in base64url without padding
   * @param signature 64 bytes in base64url without padding
   */
  record Sealed(
      String ledger,
      long entry,
      String head,
      Instant wall,
      String name,
      String key,
      String signature)
      implements EntryBody {}

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
