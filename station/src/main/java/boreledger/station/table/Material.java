package boreledger.station.table;

/**
 * A material by what matters here.
 *
 * @param name its name in the materials table, or null when the job gives only the coefficient
 * @param ctePerK its linear expansion coefficient per kelvin
 * @param origin where the coefficient comes from
 */
public record Material(String name, double ctePerK, String origin) {}
