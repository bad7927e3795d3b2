/** Gauges as data: what a profile file says, and the profiles that come with the program. */
package boreledger.drivers.profile;
