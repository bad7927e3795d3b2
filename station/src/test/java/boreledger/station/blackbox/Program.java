package boreledger.station.blackbox;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Where the assembled program and the sample captures lie, and how a process of it is built. */
final class Program {
  private Program() {}

  static Path script() {
    String home = System.getProperty("boreledger.home", "");
    Path folder = home.isEmpty() ? base().resolve("target/boreledger") : Path.of(home);
    Path script = folder.resolve("bin/boreledger").toAbsolutePath().normalize();
    if (!Files.isExecutable(script)) {
      throw new IllegalStateException(
          script + " is missing: build it with mvn -DskipTests package, or set boreledger.home");
    }
    return script;
  }

  static Path sample(String name) {
    Path file = base().resolve("../sample-captures").resolve(name).toAbsolutePath().normalize();
    if (!Files.exists(file)) {
      throw new IllegalStateException("no sample " + file);
    }
    return file;
  }

  /** A process not yet started; options for every JVM are left out, they would print a line. */
  static ProcessBuilder process(List<String> args) {
    List<String> command = new ArrayList<>();
    command.add(script().toString());
    command.addAll(args);
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    builder.environment().remove("JDK_JAVA_OPTIONS");
    return builder;
  }

  private static Path base() {
    return Path.of(System.getProperty("basedir", "."));
  }
}
