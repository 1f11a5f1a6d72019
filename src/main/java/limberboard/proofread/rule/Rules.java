package limberboard.proofread.rule;

import java.util.List;

/** All rules, in the order in which a page's faults are told. */
public final class Rules {
  private static final List<Rule> ALL =
      List.of(
          new SafeTooLate(),
          new NoCaution(),
          new NotPutBack(),
          new KeepOff(),
          new NotTogether(),
          new RopeDiffers(),
          new FiguresDiffer(),
          new FromMemory(),
          new MinutesTooFew(),
          new NotListed(),
          new NotUsed(),
          new NoTool(),
          new NotMarked(),
          new NoBefore(),
          new MainPart(),
          new ManyActions());

  private static final List<Rule> GRAVE =
      List.of(new SafeTooLate(), new NoCaution(), new FromMemory());

  private Rules() {}

  /** The rules. */
  public static List<Rule> all() {
    return ALL;
  }

  /** Those that can find what may hurt somebody. */
  public static List<Rule> grave() {
    return GRAVE;
  }

  /** Their names. */
  public static List<String> names() {
    return ALL.stream().map(Rule::name).toList();
  }
}
