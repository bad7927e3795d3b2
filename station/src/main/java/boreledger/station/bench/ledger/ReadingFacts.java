package boreledger.station.bench.ledger;

import boreledger.station.app.EntryLine;
import boreledger.station.app.OpenedReading;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Told;
import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.results.BudgetLine;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A reading in words, down to its bytes.
 *
 * @param title its place
 * @param facts what is known of it, in order
 * @param budget where the diameter's uncertainty comes from, line by line; empty without one
 * @param samples what it was picked from, in the order they came
 */
public record ReadingFacts(
    String title, List<Fact> facts, List<Fact> budget, List<SampleWords> samples) {
  /** Takes copies of the lists. */
  public ReadingFacts {
    facts = List.copyOf(facts);
    budget = List.copyOf(budget);
    samples = List.copyOf(samples);
  }

  /** A sample: when it came, its value, its bytes in hexadecimal and as far as printable. */
  public record SampleWords(String when, String value, String hex, String printable) {}

  static ReadingFacts of(OpenedReading opened, EntryWords words) {
    return new ReadingFacts(
        words.place(opened.line().position()),
        new Facts(opened, words).all(),
        budget(opened, words.lengths()),
        opened.reading().samples().stream().map(sample -> sample(sample, words)).toList());
  }

  /** A sample that became no reading. */
  static ReadingFacts ofRefused(EntryLine line, EntryWords words) {
    SampleRefused refused = (SampleRefused) line.entry().body();
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            LedgerText.FACT_STANDS.with(),
            LedgerText.REFUSED_WHY.with(Told.recorded(refused.why()))));
    facts.add(new Fact(LedgerText.FACT_TAKEN.with(), taken(words, refused.wall(), refused.tS())));
    facts.addAll(identity(line, refused.session()));
    SampleWords sample =
        new SampleWords(
            at(refused.tS()),
            refused.valueMm() == null ? LedgerText.NO_VALUE.with() : words.value(refused.valueMm()),
            RawBytes.hex(refused.raw()),
            RawBytes.printable(refused.raw()));
    return new ReadingFacts(LedgerText.REFUSED_TITLE.with(), facts, List.of(), List.of(sample));
  }

  private static List<Fact> identity(EntryLine line, long session) {
    return List.of(
        new Fact(
            LedgerText.FACT_ENTRY.with(),
            LedgerText.ENTRY_OF.with(Long.toString(line.entry().seq()), Long.toString(session))),
        new Fact(LedgerText.FACT_HASH.with(), grouped(line.hashHex())));
  }

  private static String taken(EntryWords words, Instant wall, double tS) {
    return LedgerText.TAKEN_AT.with(
        words.moments().minute(wall), wall.toString(), String.format(Locale.ROOT, "%.3f", tS));
  }

  private static String at(double tS) {
    return LedgerText.AT_S.with(String.format(Locale.ROOT, "%.3f", tS));
  }

  /** Groups of eight digits, so that a hash can be read and a line can break. */
  static String grouped(String hash) {
    return hash.replaceAll("(.{8})(?!$)", "$1 ");
  }

  private static SampleWords sample(KeptSample sample, EntryWords words) {
    return new SampleWords(
        at(sample.tS()),
        words.value(sample.valueMm()),
        RawBytes.hex(sample.raw()),
        RawBytes.printable(sample.raw()));
  }

  private static List<Fact> budget(OpenedReading opened, Lengths lengths) {
    List<Fact> lines = new ArrayList<>();
    if (opened.diameter() != null && opened.diameter().budget() != null) {
      for (BudgetLine line : opened.diameter().budget()) {
        lines.add(
            new Fact(
                Told.recorded(line.line()),
                LedgerText.BUDGET_LINE.with(
                    lengths.size(line.standardUncertaintyMm()),
                    String.format(Locale.ROOT, "%.0f", 100 * line.share()))));
      }
    }
    return lines;
  }

  /** Puts the facts together. */
  private record Facts(OpenedReading opened, EntryWords words) {
    List<Fact> all() {
      ReadingTaken reading = opened.reading();
      List<Fact> facts = new ArrayList<>();
      facts.add(fact(LedgerText.FACT_STANDS, words.state(opened.line())));
      if (!reading.position().equals(opened.line().position())) {
        facts.add(fact(LedgerText.FACT_FIRST_AT, words.place(reading.position())));
      }
      facts.add(fact(LedgerText.FACT_VALUE, value(reading)));
      if (opened.diameter() != null) {
        facts.add(fact(LedgerText.FACT_DIAMETER, diameter()));
      } else if (opened.noDiameter() != null) {
        facts.add(fact(LedgerText.FACT_DIAMETER, opened.noDiameter()));
      }
      facts.add(fact(LedgerText.FACT_TAKEN, taken(words, reading.wall(), reading.tS())));
      facts.add(fact(LedgerText.FACT_RULE, rule(reading)));
      facts.add(fact(LedgerText.FACT_SETTING, setting()));
      facts.add(fact(LedgerText.FACT_TEMPERATURES, temperatures()));
      for (String caution : reading.cautions()) {
        facts.add(fact(LedgerText.FACT_CAUTION, Told.recorded(caution)));
      }
      facts.add(fact(LedgerText.FACT_GAUGE, gauge()));
      facts.addAll(identity(opened.line(), reading.session()));
      return facts;
    }

    private static Fact fact(Text name, String value) {
      return new Fact(name.with(), value);
    }

    private String value(ReadingTaken reading) {
      return reading.standardUncertaintyMm() == null
          ? words.value(reading.valueMm())
          : LedgerText.VALUE_U.with(
              words.value(reading.valueMm()),
              words.lengths().size(reading.standardUncertaintyMm()));
    }

    private String diameter() {
      return LedgerText.DIAMETER.with(
          words.lengths().number(opened.diameter().diameterMm()),
          words.lengths().size(opened.diameter().expandedUncertaintyMm()));
    }

    private String rule(ReadingTaken reading) {
      return LedgerText.RULE.with(reading.rule(), Integer.toString(reading.samples().size()));
    }

    private String setting() {
      return opened.setting() != null && opened.setting().body() instanceof ReadingTaken setting
          ? LedgerText.SETTING.with(
              Long.toString(opened.setting().seq()), words.value(setting.valueMm()))
          : LedgerText.NO_SETTING.with();
    }

    private String temperatures() {
      return LedgerText.TEMPERATURES.with(
          temperature(opened.temperatures().settingTempC()),
          temperature(opened.temperatures().blockTempC()));
    }

    private static String temperature(Double tempC) {
      return tempC == null
          ? LedgerText.TEMPERATURE_NONE.with()
          : LedgerText.TEMPERATURE.with(Lengths.plain(tempC));
    }

    private String gauge() {
      return LedgerText.GAUGE.with(
          opened.gauge(), opened.gaugeFile(), grouped(opened.opened().gauge()));
    }
  }
}
