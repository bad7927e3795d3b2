package boreledger.station.app;

import boreledger.station.ledger.EntryBody.SessionOpened;

/**
 * A session in a list.
 *
 * @param id the number of the entry that opened it
 * @param gauge what a person calls the gauge; its file's name when its profile cannot be read
 * @param entries how many entries were said in it after its opening
 */
public record SessionLine(long id, SessionOpened opened, String gauge, long entries) {}
