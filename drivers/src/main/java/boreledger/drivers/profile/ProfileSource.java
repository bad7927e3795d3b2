package boreledger.drivers.profile;

/**
 * Where a profile came from.
 *
 * @param fileName the file's name without its folder, such as {@code signed-decimal.gauge.toml}
 * @param text the exact text
 * @param sha256 the SHA-256 of the text's bytes, as 64 lower case hexadecimal digits
 */
public record ProfileSource(String fileName, String text, String sha256) {}
