package boreledger.station.app;

import boreledger.drivers.capture.Measure;
import java.nio.file.Path;

/**
 * What to gauge from a port.
 *
 * @param gauge a profile's file, or the name of a built-in one
 * @param ring the ring's name; null for bores
 * @param settingTempC the setting ring's temperature in degrees Celsius; null when not taken
 * @param blockTempC the block's temperature in degrees Celsius; null when not taken
 * @param fresh open a new session even if one is unfinished
 */
public record LiveRequest(
    Path job,
    Path gauge,
    String port,
    Measure measure,
    String ring,
    Double settingTempC,
    Double blockTempC,
    Path ledger,
    boolean fresh) {}
