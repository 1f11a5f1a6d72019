package limberboard.drill;

import java.util.List;
import limberboard.boat.Boat;
import limberboard.library.page.Head;
import limberboard.trace.Fault;
import limberboard.trace.FaultCheck;
import limberboard.words.Sentences;

/**
 * What the owner writes: in the words that people use for the symptom, and perhaps with the answer
 * to a quick check in the words that people use for it.
 *
 * @param fault the fault
 * @param hidden what is the matter
 * @param seed what the choice of words comes from
 */
record OwnerWords(Fault fault, HiddenFault hidden, long seed) {
  private static final List<String> GREETINGS =
      List.of("Good morning,", "Hello,", "Dear yard,", "Good evening,");
  private static final List<String> ENDINGS =
      List.of(
          "What should I do?",
          "Can you tell me where to begin?",
          "How do I find out what it is?",
          "I would like to have this right before the next trip.");

  /** The letter, in lines. */
  List<String> letter() {
    Drawing drawing = new Drawing(seed);
    Head head = fault.page().head();
    String said =
        head.saidAs().isEmpty() ? head.title() : drawing.one("what is said", head.saidAs());
    Boat boat = fault.fitting().boat();
    String about =
        boat.isEntered()
            ? boat.name() + ", my " + boat.model().title() + " of " + boat.built() + ": "
            : "It is about my " + boat.name() + ": ";
    return List.of(
        drawing.one("greeting", GREETINGS),
        about + Sentences.lowered(said) + "." + told(drawing),
        drawing.one("ending", ENDINGS));
  }

  private String told(Drawing drawing) {
    if (hidden.told().isEmpty()) {
      return "";
    }
    FaultCheck check = fault.checks().get(hidden.told().getAsInt());
    String answer = check.answers().get(hidden.answers().get(hidden.told().getAsInt()));
    String phrase = drawing.one("how it is told", check.check().saidAs().get(answer));
    return " You will ask: “" + check.ask() + "” I would say: " + phrase + ".";
  }
}
