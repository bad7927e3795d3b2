package boreledger.station.audit;

import boreledger.drivers.decoder.Decoded;
import boreledger.drivers.decoder.Decoder;
import boreledger.drivers.decoder.Decoders;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.framer.FrameEvent.Frame;
import boreledger.drivers.framer.Framer;
import boreledger.drivers.framer.Framers;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.rules.ReadingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

/** Computes a reading again from the raw bytes of its samples. Everything is compared exactly. */
final class ReadingAgain {
  private static final Pattern HEX = Pattern.compile("([0-9a-f]{2})+");

  private final GaugeProfile gauge;
  private final Decoder decoder;

  ReadingAgain(GaugeProfile gauge) {
    this.gauge = gauge;
    this.decoder = Decoders.of(gauge);
  }

  /**
   * What the samples give by some rules.
   *
   * @return null when they are none that give anything
   */
  PickEvent.Picked picked(ReadingTaken reading, ReadingRules rules) {
    List<Sample> samples = new ArrayList<>();
    for (KeptSample kept : reading.samples()) {
      if (decode(kept) instanceof Sample sample) {
        samples.add(sample);
      }
    }
    boolean whole = !samples.isEmpty() && samples.size() == reading.samples().size();
    return whole && rules.again(gauge, samples) instanceof PickEvent.Picked picked ? picked : null;
  }

  /**
   * What differs, one clause for each difference; empty when nothing does.
   *
   * @param rules those in force when the reading was taken
   */
  List<String> differences(ReadingTaken reading, ReadingRules rules) {
    List<String> differences = new ArrayList<>();
    List<Sample> samples = new ArrayList<>();
    for (KeptSample kept : reading.samples()) {
      sample(kept, samples, differences);
    }
    String rule = gauge.pick().rule();
    compare("the rule", reading.rule(), rule, differences);
    if (reading.samples().isEmpty()) {
      differences.add("no sample to compute it from");
    } else if (samples.size() == reading.samples().size()) {
      pick(reading, rules.again(gauge, samples), differences);
    }
    return differences;
  }

  private void sample(KeptSample kept, List<Sample> samples, List<String> differences) {
    Decoded decoded = decode(kept);
    if (decoded instanceof Sample sample) {
      samples.add(sample);
      compare(
          "the sample " + kept.raw() + " at " + kept.tS() + " s",
          kept.valueMm(),
          sample.valueMm(),
          differences);
    } else {
      differences.add("the sample " + kept.raw() + " is no single frame with a value");
    }
  }

  /** The sample; null when the bytes are anything but one frame. */
  private Decoded decode(KeptSample kept) {
    if (!HEX.matcher(kept.raw()).matches()) {
      return null;
    }
    Framer framer = Framers.of(gauge.frame());
    List<FrameEvent> events = new ArrayList<>();
    events.addAll(framer.feed(new LineEvent.Chunk(kept.tS(), Bytes.ofHex(kept.raw()))));
    events.addAll(framer.feed(new LineEvent.End(kept.tS())));
    boolean single = events.size() == 1 && events.get(0) instanceof Frame;
    return single ? decoder.decode((Frame) events.get(0)) : null;
  }

  private static void pick(ReadingTaken reading, PickEvent again, List<String> differences) {
    if (again instanceof PickEvent.NotPicked none) {
      differences.add("the rule picks nothing from its samples: " + none.why());
      return;
    }
    PickEvent.Picked picked = (PickEvent.Picked) again;
    compare("value_mm", reading.valueMm(), picked.valueMm(), differences);
    compare(
        "standard_uncertainty_mm",
        reading.standardUncertaintyMm(),
        picked.standardUncertaintyMm(),
        differences);
    compare("t_s", reading.tS(), picked.tS(), differences);
    // More may stand there: what came of earlier samples, or of a person who confirmed it.
    picked.cautions().stream()
        .filter(caution -> !reading.cautions().contains(caution))
        .forEach(caution -> differences.add("its caution is missing: " + caution));
  }

  private static void compare(String what, Object stored, Object again, List<String> differences) {
    if (!Objects.equals(stored, again)) {
      differences.add(what + " is stored as " + stored + ", computed again as " + again);
    }
  }
}
