package rungbook.web.job;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * A few worker threads for long jobs. Owners take turns: between two jobs of one owner, every other owner that waits
 * gets one. A job that runs longer than the limit is stopped.
 *
 * @param <T> what the jobs make
 */
public final class RoundRobinExecutor<T> implements AutoCloseable {
  static final int MOST_OF_ONE_OWNER = 8;
  private static final int MOST_WAITING = 64;
  private final int workers;
  private final Duration limit;
  private final ExecutorService threads;
  private final ScheduledThreadPoolExecutor timer;
  /** The jobs that wait, by owner; the owner whose turn is next comes first. */
  private final Map<String, Deque<Job<T>>> waiting = new LinkedHashMap<>();
  private final Set<Job<T>> running = new HashSet<>();
  private int busy;
  private boolean closed;

  /**
   * @param workers how many jobs run at once.
   * @param limit how long one may run
   */
  public RoundRobinExecutor(String name, int workers, Duration limit) {
    this.workers = workers;
    this.limit = limit;
    threads = Executors.newFixedThreadPool(workers, work -> daemon(work, name));
    timer = new ScheduledThreadPoolExecutor(1, work -> daemon(work, name + " timer"));
    timer.setRemoveOnCancelPolicy(true);
  }

  private static Thread daemon(Runnable work, String name) {
    var thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  public Duration limit() {
    return limit;
  }

  /**
   * @param whenDone runs once the job is finished, failed or stopped
   * @throws RejectedExecutionException if too many jobs wait
   */
  public Job<T> submit(String owner, Callable<T> work, Runnable whenDone) {
    var job = new Job<>(owner, work, whenDone);
    synchronized (this) {
      enqueue(job);
      if (busy < workers) {
        busy++;
        threads.execute(this::runAll);
      }
    }
    return job;
  }

  private void enqueue(Job<T> job) {
    dropDone();
    var own = waiting.getOrDefault(job.owner(), new ArrayDeque<>());
    if (closed || own.size() >= MOST_OF_ONE_OWNER || waitingCount() >= MOST_WAITING) {
      throw new RejectedExecutionException("too many jobs wait");
    }
    own.add(job);
    waiting.putIfAbsent(job.owner(), own);
  }

  private void dropDone() {
    waiting.values().forEach(jobs -> jobs.removeIf(Job::isDone));
    waiting.values().removeIf(Deque::isEmpty);
  }

  private int waitingCount() {
    return waiting.values().stream().mapToInt(Deque::size).sum();
  }

  private void runAll() {
    for (var job = next(); job.isPresent(); job = next()) {
      run(job.get());
    }
  }

  /** The next job of the owner whose turn it is, who then goes to the end; empty ends the worker. */
  private synchronized Optional<Job<T>> next() {
    dropDone();
    if (waiting.isEmpty()) {
      busy--;
      return Optional.empty();
    }
    var owner = waiting.keySet().iterator().next();
    var own = waiting.remove(owner);
    var job = own.remove();
    if (!own.isEmpty()) {
      waiting.put(owner, own);
    }
    running.add(job);
    return Optional.of(job);
  }

  private void run(Job<T> job) {
    try {
      runInTime(job);
    } catch (RejectedExecutionException closedMeanwhile) {
      job.stop(Job.StopReason.SERVER_STOPS);
    } finally {
      ended(job);
      Thread.interrupted(); // a stopped job leaves its interrupt behind; the next is not to see it
    }
  }

  private void runInTime(Job<T> job) {
    var stop = timer.schedule(() -> job.stop(Job.StopReason.TOO_LONG), limit.toMillis(), TimeUnit.MILLISECONDS);
    try {
      job.run();
    } finally {
      stop.cancel(false);
    }
  }

  private synchronized void ended(Job<T> job) {
    running.remove(job);
  }

  /** How many jobs wait or run. */
  public synchronized int load() {
    dropDone();
    return waitingCount() + running.size();
  }

  /** Stops every job; none is taken any more. */
  @Override
  public void close() {
    stopAll().forEach(job -> job.stop(Job.StopReason.SERVER_STOPS));
    threads.shutdown();
    timer.shutdown();
  }

  private synchronized List<Job<T>> stopAll() {
    closed = true;
    var jobs = new ArrayList<>(running);
    waiting.values().forEach(jobs::addAll);
    return jobs;
  }
}
