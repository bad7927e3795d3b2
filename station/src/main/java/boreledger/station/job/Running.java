package boreledger.station.job;

/**
 * Temperatures of the running engine and the margin wanted then; each null when the job leaves it
 * out.
 */
public record Running(
    Double ringTempC, Double wallTopTempC, Double wallBottomTempC, Double hotMarginMm) {}
