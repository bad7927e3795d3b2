package boreledger.station.job.draft;

/**
 * One field of a draft.
 *
 * @param index which of several rings, pistons or marks, from 0; 0 elsewhere
 */
public record Place(Field field, int index) {}
