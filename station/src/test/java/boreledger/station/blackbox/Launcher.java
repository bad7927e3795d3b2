package boreledger.station.blackbox;

import java.util.List;

/**
 * Runs the program once with these arguments and waits until it has ended.
 *
 * <p>This is the one place to plug in a faster way: the system property {@value #PROPERTY} names a
 * class with a public constructor without parameters that implements this interface and calls the
 * program in the running JVM. Without the property every run is a process of its own. All paths in
 * the arguments are absolute; two runs may be under way at once unless {@link #parallel} is 1.
 */
public interface Launcher {
  /** Name of the system property. */
  String PROPERTY = "boreledger.launcher";

  /**
   * Runs to the end.
   *
   * @return exit status, standard output and standard error of this run alone
   */
  Outcome run(List<String> args);

  /** How many runs may be under way at once. */
  default int parallel() {
    return 1;
  }

  /** Same as {@link #run(List)}. */
  default Outcome run(String... args) {
    return run(List.of(args));
  }

  /** Always a process: for what only a process can show. */
  static Launcher process() {
    return new ProcessLauncher();
  }

  /** The class that the property names, else a process. */
  static Launcher quick() {
    String name = System.getProperty(PROPERTY, "");
    if (name.isEmpty()) {
      return process();
    }
    try {
      return (Launcher) Class.forName(name).getConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("no launcher " + name, e);
    }
  }
}
