package boreledger.drivers.capture;

import java.time.Instant;

/**
 * The first line of a capture file.
 *
 * @param gauge the gauge profile's file name
 * @param measure what was measured
 * @param ring the ring's name for {@code gap} and {@code ring-depth}; null for {@code bore}
 * @param started when {@code t} was zero
 * @param settingTempC the setting ring's temperature in degrees Celsius; null when not said
 * @param blockTempC the block's temperature in degrees Celsius; null when not said
 */
public record CaptureHeader(
    String gauge,
    Measure measure,
    String ring,
    Instant started,
    Double settingTempC,
    Double blockTempC) {}
