package boreledger.drivers.serial;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What the system knows about its ports at this moment. */
interface SystemPorts {
  /** The running system. */
  SystemPorts RUNNING =
      new SystemPorts() {
        @Override
        public List<PortIdentity> list() {
          return SerialPorts.list();
        }

        @Override
        public Optional<String> resolve(String path) {
          return path.startsWith("/") ? followed(path) : named(path);
        }

        private Optional<String> followed(String path) {
          try {
            return Optional.of(Path.of(path).toRealPath().toString());
          } catch (IOException | InvalidPathException e) {
            return Optional.empty();
          }
        }

        // Names such as COM3 are no files; the list may show them with the system's prefix.
        private Optional<String> named(String name) {
          return list().stream()
              .map(PortIdentity::path)
              .filter(path -> path.substring(path.lastIndexOf('\\') + 1).equalsIgnoreCase(name))
              .findFirst();
        }
      };

  /** All ports listed now. */
  List<PortIdentity> list();

  /** The listed path behind a typed one, links followed; empty when there is no such port. */
  Optional<String> resolve(String path);
}
