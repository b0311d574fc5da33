package rungbook.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.h2.store.fs.FileBase;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * A disk under H2, in URLs {@code jdbc:h2:simulated:FILE}, that can lose its power. What was forced is kept; of what
 * was written
 * since, a power cut keeps any part, in any order, as a disk and an operating system may.
 */
public final class SimulatedDisk extends FilePathWrapper {
  private static volatile long capacityBytes = Long.MAX_VALUE;
  private static final Map<String, Image> IMAGES = new ConcurrentHashMap<>();

  @Override
  public String getScheme() {
    return "simulated";
  }

  @Override
  public FileChannel open(String mode) throws IOException {
    var name = getBase().toString();
    var image = IMAGES.computeIfAbsent(name, n -> new Image());
    return new Channel(getBase().open(mode), image);
  }

  /** Registers the scheme; H2 must then be loaded by the caller's class loader. */
  public static void plugIn() {
    FilePath.register(new SimulatedDisk());
  }

  /** How often a file was forced since the program began. */
  static int syncs(Path file) {
    return image(file).syncs.get();
  }

  /** From now on a file that would grow larger than this cannot be written. */
  static void limit(long bytes) {
    capacityBytes = bytes;
  }

  /** Writes what a power cut at this moment would leave of a file. */
  static void cut(Path file, Path left, Random random) throws IOException {
    Files.write(left, image(file).cut(random));
  }

  private static Image image(Path file) {
    return IMAGES.entrySet().stream().filter(entry -> entry.getKey().endsWith(file.getFileName().toString()))
        .findFirst().orElseThrow().getValue();
  }

  /** @param bytes null where the file was cut off at {@code at} */
  private record Write(long at, byte[] bytes) {}

  /** What is surely on the disk, and what is only on its way. */
  private static final class Image {
    private final AtomicInteger syncs = new AtomicInteger();
    private final List<Write> onTheWay = new ArrayList<>();
    private byte[] kept = {};

    synchronized void add(Write write) {
      onTheWay.add(write);
    }

    synchronized void force() {
      kept = with(kept, onTheWay);
      onTheWay.clear();
      syncs.incrementAndGet();
    }

    synchronized byte[] cut(Random random) {
      return with(kept, onTheWay.stream().filter(write -> random.nextBoolean()).toList());
    }

    private static byte[] with(byte[] bytes, List<Write> writes) {
      for (var write : writes) {
        var end = write.bytes == null ? (int) write.at : Math.max(bytes.length, (int) write.at + write.bytes.length);
        bytes = end == bytes.length ? bytes.clone() : Arrays.copyOf(bytes, end);
        if (write.bytes != null) {
          System.arraycopy(write.bytes, 0, bytes, (int) write.at, write.bytes.length);
        }
      }
      return bytes;
    }
  }

  private static final class Channel extends FileBase {
    private final FileChannel file;
    private final Image image;

    Channel(FileChannel file, Image image) {
      this.file = file;
      this.image = image;
    }

    @Override
    public synchronized int write(ByteBuffer source, long at) throws IOException {
      if (at + source.remaining() > capacityBytes) {
        throw new IOException("No space left on device");
      }
      var bytes = new byte[source.remaining()];
      source.duplicate().get(bytes);
      image.add(new Write(at, bytes));
      return file.write(source, at);
    }

    @Override
    public int write(ByteBuffer source) throws IOException {
      var at = file.position();
      var count = write(source, at);
      file.position(at + count);
      return count;
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
      if (size < file.size()) {
        image.add(new Write(size, null));
      }
      file.truncate(size);
      return this;
    }

    @Override
    public void force(boolean withMetadata) throws IOException {
      image.force();
    }

    @Override
    public int read(ByteBuffer target) throws IOException {
      return file.read(target);
    }

    @Override
    public int read(ByteBuffer target, long at) throws IOException {
      return file.read(target, at);
    }

    @Override
    public long position() throws IOException {
      return file.position();
    }

    @Override
    public FileChannel position(long at) throws IOException {
      file.position(at);
      return this;
    }

    @Override
    public long size() throws IOException {
      return file.size();
    }

    @Override
    public FileLock tryLock(long at, long size, boolean shared) throws IOException {
      return file.tryLock(at, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
      file.close();
    }
  }
}
