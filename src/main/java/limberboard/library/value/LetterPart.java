package limberboard.library.value;

import java.util.List;

/**
 * A place in an answer to an owner's letter at which words stand that a page can give. What has to
 * be worked out stands after the words, whatever they are: cautions, chances, checks, steps.
 */
public enum LetterPart implements Word {
  /** How a letter begins. */
  GREETING("Hello {owner},", "owner"),
  /** What cannot wait, before everything else: a danger that the letter tells of. */
  URGENT(
      "Please read this first. You write that {danger}. Keep everybody away from the danger. If"
          + " somebody is in danger now, call the rescue service or the coastguard before you do"
          + " anything else.",
      "danger"),
  /** What may be an emergency, before everything that is not. */
  EMERGENCY("Please read this first."),
  /** What the letter is about. */
  OPENING("Thank you for your letter about {boat}. This is what we think.", "boat"),
  /** What is asked of an owner whose boat is known by her model only. */
  MODEL_ONLY(
      "We do not know your own boat yet. We have answered for {boat} as the yard usually fitted"
          + " her. Please send us her hull number or her name.",
      "boat"),
  /** Before each of several faults. */
  FAULT("About this: {symptom}.", "symptom", "boat"),
  /** Before what the owner has found out already. */
  TOLD("This is what you have told us:"),
  /** Before what the owner writes now otherwise than in an earlier letter. */
  CHANGED("You wrote something else before. We go on from what you write now:"),
  /** Before the likeliest causes. */
  LIKELY("This is what it may be:"),
  /** After them: where the chances come from. */
  HOW_SURE("These chances are an estimate. They come from: {from}.", "from"),
  /** Before what does not go together. */
  CLASH("Some of this does not go together. {clash}", "clash"),
  /** Before the cautions. */
  CAUTIONS("Please take care of this before you begin:"),
  /** Before the checks. */
  CHECKS("Please look at this for us. You can do it in one visit to the boat."),
  /** After the checks. */
  WRITE_BACK(
      "Write back the number and your answer for each. If you cannot tell, say so. That helps us"
          + " too."),
  /** Before a mend that the owner may do. */
  MEND("This is the work that should help: {mend}.", "mend", "boat"),
  /** After a mend. */
  AFTER_MEND("Please write to us how it went, also if it did not help."),
  /** When the yard has to look. */
  YARD("The yard should look at this next. {why}", "why", "boat"),
  /** When only a licensed person may do the mend that is likeliest. */
  LICENSED(
      "The work would be: {mend}. Only a person with a licence for it may do it. The rules of your"
          + " country come before this letter.",
      "mend",
      "boat"),
  /** Before what makes something safe that has to be safe first. */
  MAKE_SAFE("Before anything else, please make this safe."),
  /** The one question when the boat is not known. */
  WHICH_BOAT(
      "We do not know which boat you write about. What is her hull number or her name? Then we"
          + " can answer you."),
  /** The one question when it may be one of several symptoms. */
  WHICH_SYMPTOM(
      "We are not sure that we have understood you. Which of these is it? Please write back its"
          + " number."),
  /** When the library has nothing for it. */
  NOT_COVERED(
      "We have no page about this fault yet. We do not want to guess. Please send us the model and"
          + " the hull number, what you see, since when, and two photographs: one from near, one"
          + " from far. Somebody from the yard will answer you."),
  /** An answer to what is no fault. */
  NO_FAULT("Thank you for your letter. Somebody from the yard will answer you."),
  /** How a letter ends. */
  CLOSING("With kind regards,\n\nYour boatyard");

  private final String plain;
  private final List<String> placeholders;

  LetterPart(String plain, String... placeholders) {
    this.plain = plain;
    this.placeholders = List.of(placeholders);
  }

  /** The words that stand where no page gives others, in Markdown. */
  public String plain() {
    return plain;
  }

  /** What may stand in braces in the words, to be replaced. */
  public List<String> placeholders() {
    return placeholders;
  }

  /** Whether it has words for different matters, each with its {@code when}. */
  public boolean hasMatters() {
    return this == URGENT || this == NO_FAULT;
  }
}
