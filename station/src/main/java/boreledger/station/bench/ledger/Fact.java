package boreledger.station.bench.ledger;

/** Something that is known, with its name. */
public record Fact(String name, String value) {}
