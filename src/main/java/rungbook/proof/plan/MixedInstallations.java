package rungbook.proof.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.ParallelTasks;
import rungbook.circuit.Probe;
import rungbook.circuit.Reading;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.proof.cases.JoinedArchives;
import rungbook.proof.cases.JoinedWays;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.SystemVariants;

/**
 * Installations of a system and its variants: each drawn house has one of them, as often as its share says. The drawn
 * ones of the base come first, then those of each variant; the corners follow in the same order.
 */
public final class MixedInstallations implements Installations, Restorable {

  private final List<Form> forms;
  private final List<String> cases;
  private final List<Variant> variants;
  private final int[][] localCase;
  private final MixedSamples samples;
  private final double[] weights;
  private final double[] likelihoods;
  private final List<List<String>> faults;
  private final JoinedWays together = new JoinedWays();

  /** The base or a variant, solved by itself. */
  private record Form(String name, double share, Installations of) {}

  private MixedInstallations(List<Form> forms) {
    this.forms = forms;
    double all = forms.stream().mapToDouble(Form::share).sum();
    variants = forms.stream().map(form -> new Variant(form.name(), form.share() / all, form.of().drawn())).toList();
    cases = forms.stream().flatMap(form -> form.of().cases().stream()).distinct().toList();
    localCase = forms.stream()
        .map(form -> cases.stream().mapToInt(key -> form.of().cases().indexOf(key)).toArray()).toArray(int[][]::new);
    samples = new MixedSamples(forms.stream().map(Form::of).toList());
    weights = weights();
    likelihoods = IntStream.range(0, cases.size()).mapToDouble(this::likelihoodOf).toArray();
    faults = IntStream.range(0, cases.size()).mapToObj(this::faultsOf).toList();
  }

  /** @param drawn the number of random installations, usually 256; each variant has one at least */
  public static Installations of(SystemVariants systems, int drawn) {
    if (systems.variants().isEmpty()) {
      return DictionaryInstallations.of(systems.base(), drawn);
    }
    List<Draw> draws = DictionaryInstallations.draws(drawn + systems.variants().size());
    int ofVariants = systems.variants().stream().mapToInt(variant -> part(variant.share(), drawn)).sum();
    int from = Math.max(1, drawn - ofVariants);
    List<Supplier<Form>> forms = new ArrayList<>();
    List<Draw> ofBase = draws.subList(0, from);
    forms.add(() -> new Form("", systems.baseShare(),
        DictionaryInstallations.of(systems.base(), ofBase, Samples.corners())));
    for (rungbook.system.Variant variant : systems.variants()) {
      int till = Math.min(draws.size(), from + part(variant.share(), drawn));
      List<Draw> own = draws.subList(from, till);
      forms.add(() -> new Form(variant.name(), variant.share(),
          DictionaryInstallations.of(variant.system(), own, Samples.fewCorners())));
      from = till;
    }
    return new MixedInstallations(built(forms));
  }

  private static List<Form> built(List<Supplier<Form>> forms) {
    Form[] built = new Form[forms.size()];
    ParallelTasks.run(built.length, i -> built[i] = forms.get(i).get());
    return List.of(built);
  }

  private static int part(double share, int drawn) {
    return Math.max(1, (int) Math.round(share * drawn));
  }

  /** As few installations of each as show about how far readings go. */
  public static Installations few(SystemVariants systems) {
    Function<ControlSystem, Installations> solved = DictionaryInstallations::few;
    List<Form> forms = new ArrayList<>(List.of(new Form("", systems.baseShare(), solved.apply(systems.base()))));
    systems.variants()
        .forEach(one -> forms.add(new Form(one.name(), one.share(), solved.apply(one.system()))));
    return forms.size() == 1 ? forms.get(0).of() : new MixedInstallations(forms);
  }

  private double[] weights() {
    double[] byCase = new double[cases.size()];
    for (int one = 0; one < byCase.length; one++) {
      int having = 0;
      for (int form = 0; form < forms.size(); form++) {
        having += localCase[form][one] < 0 ? 0 : forms.get(form).of().drawn();
      }
      byCase[one] = having == 0 ? 1 : (double) samples.drawn() / having;
    }
    return byCase;
  }

  @Override
  public List<String> cases() {
    return cases;
  }

  @Override
  public List<String> faults(int caseNumber) {
    return faults.get(caseNumber);
  }

  private List<String> faultsOf(int caseNumber) {
    int having = IntStream.range(0, forms.size()).filter(form -> localCase[form][caseNumber] >= 0).findFirst()
        .orElseThrow();
    return forms.get(having).of().faults(localCase[having][caseNumber]);
  }

  @Override
  public double likelihood(int caseNumber) {
    return likelihoods[caseNumber];
  }

  /** A fault that few installations can have is as much rarer. */
  private double likelihoodOf(int caseNumber) {
    double likelihood = 0;
    for (int form = 0; form < forms.size(); form++) {
      int local = localCase[form][caseNumber];
      likelihood += local < 0 ? 0 : variants.get(form).share() * forms.get(form).of().likelihood(local);
    }
    return likelihood;
  }

  @Override
  public int samples() {
    return samples.size();
  }

  @Override
  public int drawn() {
    return samples.drawn();
  }

  @Override
  public boolean models(Probe probe) {
    return forms.stream().anyMatch(form -> form.of().models(probe));
  }

  @Override
  public boolean shows(String sight) {
    return forms.stream().anyMatch(form -> form.of().shows(sight));
  }

  @Override
  public List<String> values(String sight) {
    return forms.stream().map(form -> form.of().values(sight)).filter(values -> !values.isEmpty()).findFirst()
        .orElse(List.of());
  }

  @Override
  public List<Variant> variants() {
    return variants;
  }

  @Override
  public int variant(int sample) {
    return samples.set(sample);
  }

  @Override
  public double weight(int caseNumber, int sample) {
    return localCase[samples.set(sample)][caseNumber] < 0 ? 0 : weights[caseNumber];
  }

  @Override
  public Installations without(Set<String> keys) {
    List<Form> left = forms.stream().filter(form -> !keys.contains(Names.key(form.name()))).toList();
    return left.size() == forms.size() ? this : new MixedInstallations(left);
  }

  @Override
  public Memory memory() {
    return forms.stream().map(form -> form.of().memory()).max(Comparator.naturalOrder()).orElse(Memory.NOTHING);
  }

  @Override
  public Map<Integer, Integer> left(CircuitState state, BitSet wanted) {
    return together.of(localCase, wanted, (form, own) -> forms.get(form).of().left(state, own));
  }

  @Override
  public int solutions() {
    return forms.stream().mapToInt(form -> form.of().solutions()).sum();
  }

  @Override
  public Observations in(CircuitState state, List<Probe> probes) {
    return new Mixed(forms.stream().map(Form::of)
        .map(of -> of.in(state, probes.stream().filter(of::models).toList())).toList());
  }

  /** Where no part of a variant ends, the leads have no circuit between them; what it does not state has no value. */
  private double[] nothing(Probe probe, int form) {
    double[] readings = new double[forms.get(form).of().samples()];
    Arrays.fill(readings, probe.isOutside() ? Reading.UNSTEADY : Reading.FLOATING);
    return readings;
  }

  @Override
  public int[] repaired(int caseNumber, Set<String> gone, Set<String> renewed) {
    int[] as = new int[samples()];
    for (int form = 0; form < forms.size(); form++) {
      Installations of = forms.get(form).of();
      int local = localCase[form][caseNumber];
      int[] own = local < 0 ? new int[of.samples()] : of.repaired(local, gone, renewed);
      samples.copy(form, IntStream.of(own).map(one -> cases.indexOf(of.cases().get(one))).toArray(), as);
    }
    return as;
  }

  @Override
  public String circumstances(int caseNumber, int sample) {
    int set = samples.set(sample);
    String house = forms.get(set).of().circumstances(Math.max(0, localCase[set][caseNumber]), samples.local(sample));
    return forms.get(set).name().isEmpty() ? house : "variant " + forms.get(set).name() + ", " + house;
  }

  private Stream<Restorable> restorable() {
    return forms.stream().map(Form::of).filter(Restorable.class::isInstance).map(Restorable.class::cast);
  }

  @Override
  public boolean isChanged() {
    return restorable().anyMatch(Restorable::isChanged);
  }

  @Override
  public byte[] archive() {
    return JoinedArchives.join(restorable().map(Restorable::archive).toList());
  }

  @Override
  public void restore(byte[] archive) {
    List<byte[]> parts = JoinedArchives.apart(archive);
    List<Restorable> own = restorable().toList();
    for (int i = 0; parts.size() == own.size() && i < own.size(); i++) {
      own.get(i).restore(parts.get(i));
    }
  }

  /** What is observed in each form, put together. */
  private final class Mixed implements Observations {
    private final List<Observations> of;

    Mixed(List<Observations> of) {
      this.of = of;
    }

    @Override
    public void expect(BitSet wanted) {
      ParallelTasks.run(forms.size(), form -> {
        int[] local = wanted.stream().map(one -> localCase[form][one]).filter(one -> one >= 0).toArray();
        of.get(form).expect(IntStream.of(local).collect(BitSet::new, BitSet::set, BitSet::or));
      });
    }

    @Override
    public void readings(int caseNumber, Probe probe, double[] into) {
      for (int form = 0; form < forms.size(); form++) {
        double[] own = nothing(probe, form);
        int local = localCase[form][caseNumber];
        if (local >= 0 && forms.get(form).of().models(probe)) {
          of.get(form).readings(local, probe, own);
        }
        samples.copy(form, own, into);
      }
    }

    @Override
    public void seen(int caseNumber, String sight, boolean[] into) {
      for (int form = 0; form < forms.size(); form++) {
        boolean[] own = new boolean[forms.get(form).of().samples()];
        int local = localCase[form][caseNumber];
        if (local >= 0 && forms.get(form).of().shows(sight)) {
          of.get(form).seen(local, sight, own);
        }
        samples.copy(form, own, into);
      }
    }
  }
}
