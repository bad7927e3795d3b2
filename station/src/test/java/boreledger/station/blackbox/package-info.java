/**
 * The finished program seen from outside: the folder that the build assembles is started as a
 * process and fed files and lines. Nothing of the program's own code is used here.
 *
 * <p>The system property {@code boreledger.home} holds the path of that folder. {@link
 * boreledger.station.blackbox.Launcher} says how the many small runs can be driven in one JVM.
 */
package boreledger.station.blackbox;
