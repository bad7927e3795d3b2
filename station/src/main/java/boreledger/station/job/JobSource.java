package boreledger.station.job;

/**
 * Where a job came from.
 *
 * @param fileName the file's name without its folder
 * @param text the exact text
 * @param sha256 the SHA-256 of the text's UTF-8 bytes, as 64 lower case hexadecimal digits
 */
public record JobSource(String fileName, String text, String sha256) {}
