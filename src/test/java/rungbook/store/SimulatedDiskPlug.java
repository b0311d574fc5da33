package rungbook.store;

import io.agroal.api.AgroalPoolInterceptor;
import jakarta.inject.Singleton;

/** Plugs the simulated disk in when the pool of connections is made, which is before the first database is opened. */
@Singleton
public class SimulatedDiskPlug implements AgroalPoolInterceptor {
  SimulatedDiskPlug() {
    SimulatedDisk.plugIn();
  }
}
