package boreledger.station.report;

/**
 * A finished sheet.
 *
 * @param pdf the file's bytes
 * @param pages how many pages it has
 * @param cautions how many cautions of its own job it carries
 */
public record PrintedSheet(byte[] pdf, int pages, int cautions) {}
