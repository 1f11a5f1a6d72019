package limberboard.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.library.page.Model;
import limberboard.library.value.Amount;
import limberboard.workings.sums.Input;
import limberboard.workings.sums.PutIn;
import limberboard.workings.sums.Reckoning;
import limberboard.workings.sums.Sum;
import limberboard.workings.sums.Sums;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code workings}: lists the sums of the trade, or reckons one. */
@Command(
    name = "workings",
    mixinStandardHelpOptions = true,
    description = {
      "Lists the workings, or with the id of one reckons it.",
      "What is not put in is as usual, or with --boat the boat's own where it is known."
    },
    footer = {
      "",
      "Examples:",
      "  limberboard workings",
      "  limberboard workings hole-inflow --with \"diameter=38 mm\" --with \"depth=0.4 m\"",
      "  limberboard workings anode-mass --boat redshank --with area=0.3m2"
    })
final class WorkingsCommand implements Callable<Integer> {
  private final CommandContext session;
  private final Sums sums = Sums.ofTheTrade();
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;

  @Parameters(arity = "0..1", paramLabel = "WORKING", description = "The id of a working.")
  private Optional<String> id = Optional.empty();

  @Option(
      names = "--with",
      paramLabel = "INPUT=VALUE",
      description =
          "What is put in, repeated: a quantity with its unit, a word of a choice, or with --boat"
              + " the name of a measure of its model.")
  private List<String> with = List.of();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  WorkingsCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Optional<Boat> found = boat();
    if (id.isEmpty()) {
      list();
      return ExitCode.OK;
    }
    Sum sum = sums.sum(id.get()).orElseThrow(() -> noSum(id.get()));
    Map<String, Amount> values = parsed();
    checkMeasures(sum, values);
    return print(sum, PutIn.of(sum, values, found));
  }

  /** A word put in for a number is a measure that some model knows, or a mistake. */
  private void checkMeasures(Sum sum, Map<String, Amount> values) {
    sum.inputs().stream()
        .filter(Input.Number.class::isInstance)
        .map(Input::id)
        .filter(values::containsKey)
        .forEach(
            input -> {
              if (values.get(input) instanceof Amount.Measured measured) {
                checkMeasure(input, measured.measure());
              }
            });
  }

  private void checkMeasure(String input, String measure) {
    boolean known =
        session.workspace(session.folders(workspace.folder())).library().all(Model.class).stream()
            .anyMatch(model -> model.details().measures().containsKey(measure));
    if (!known) {
      throw new Failure(
          ExitCode.USAGE,
          "--with: "
              + input
              + " is \""
              + measure
              + "\", which is neither a number with its unit nor a measure of a model. Write a"
              + " number with its unit, such as 0.5 m");
    }
  }

  private void list() {
    if (json) {
      new JsonOutput(session.out()).print(Map.of("workings", WorkingsView.Listed.all(sums)));
    } else {
      sums.all().forEach(sum -> session.out().printf("%-16s %s%n", sum.id(), sum.text().title()));
    }
  }

  private Optional<Boat> boat() {
    return boat.id()
        .flatMap(
            asked ->
                session.fitting(session.workspace(session.folders(workspace.folder())), boat.id()))
        .map(Fitting::boat);
  }

  private Map<String, Amount> parsed() {
    Map<String, Amount> values = new LinkedHashMap<>();
    for (String put : with) {
      int equals = put.indexOf('=');
      if (equals < 1) {
        throw new Failure(
            ExitCode.USAGE, "\"" + put + "\" is not INPUT=VALUE, such as \"depth=0.5 m\"");
      }
      values.put(put.substring(0, equals).strip(), amount(put.substring(equals + 1).strip()));
    }
    return values;
  }

  /** A quantity, with or without the space before its unit, or a word. */
  private static Amount amount(String text) {
    try {
      return Amount.of(text.replaceFirst("^(-?[0-9.]+)(?=[^0-9. x-])", "$1 "));
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.USAGE, "--with: " + e.getMessage());
    }
  }

  private Integer print(Sum sum, PutIn put) {
    Reckoning reckoning = sum.reckon(put.values());
    if (reckoning instanceof Reckoning.Refused refused) {
      throw new Failure(ExitCode.USAGE, String.join("\nlimberboard: ", refused.reasons()));
    }
    Reckoning.Done done = (Reckoning.Done) reckoning;
    if (json) {
      new JsonOutput(session.out()).print(WorkingsView.Reckoned.of(sum, put, done));
    } else {
      List<String> lines = new ArrayList<>(WorkingsText.of(sum, put, done));
      lines.forEach(session.out()::println);
    }
    return ExitCode.OK;
  }

  private Failure noSum(String asked) {
    return Failure.unknown(
        "working", asked, sums.ids(), "there are " + String.join(", ", sums.ids()));
  }
}
