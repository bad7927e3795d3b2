package boreledger.station.results;

/**
 * A gauge in a session that counts, and how it held its zero. In JSON every component goes by its
 * name in snake case.
 *
 * @param session the number of the entry that opened the session
 * @param ring the ring's name; null for bores
 * @param started by the clock on the wall, ISO 8601
 * @param profile the gauge profile's content hash
 * @param conditions how the block stood, see {@link Conditions}
 * @param openingMm the gauge's value at the first check on the setting ring; null without one
 * @param closingMm the gauge's value at the last check, when it was another one; else null
 * @param driftMm how far apart the checks' zeros lie, the setting's own growth taken off; null with
 *     fewer than two checks
 */
public record GaugeUse(
    long session,
    String measure,
    String ring,
    String started,
    String gauge,
    String profile,
    double resolutionMm,
    double maxErrorMm,
    Conditions conditions,
    Double settingTempC,
    Double blockTempC,
    Double openingMm,
    Double closingMm,
    Double driftMm) {}
