package rungbook.web;

import io.quarkus.runtime.QuarkusApplication;

/** Starts the server and stops it at once, so that the JVM can keep an archive of the classes that a start loads. */
class ArchiveTrainingRun implements QuarkusApplication {
  @Override
  public int run(String... arguments) {
    return 0;
  }
}
