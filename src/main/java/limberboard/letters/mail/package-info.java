/**
 * Reading letters as mail programs write them, and telling what their writers said now from all
 * else that stands in them.
 *
 * <p>To use it: give the bytes of a letter to {@link limberboard.letters.mail.MailReader}, or text
 * that somebody pasted, and ask the {@link limberboard.letters.mail.Letter} for what was written
 * for it:
 *
 * <pre>{@code
 * import java.io.ByteArrayInputStream;
 * import java.nio.charset.StandardCharsets;
 * import limberboard.letters.mail.*;
 *
 * String mail = "From: A. N. Owner <owner@example.org>\n"
 *     + "Subject: Re: leak\n\n"
 *     + "It tastes of salt.\n\n"
 *     + "> Does it taste of salt?\n";
 * Letter letter = MailReader.read(new ByteArrayInputStream(mail.getBytes(StandardCharsets.UTF_8)));
 * assert letter.own().equals("It tastes of salt.");
 * assert letter.of(Passage.Kind.QUOTED).equals("> Does it taste of salt?");
 * assert MailReader.pasted("Wet berth.").own().equals("Wet berth.");
 * }</pre>
 *
 * <p><b>Choices made.</b> A letter is read part by part and never held whole, so neither its length
 * nor its nesting matters; what attachments hold is counted and not kept. HTML becomes words: what
 * could run, load or hide is dropped before anything is read. Whatever is damaged is said in a
 * remark and the rest is read. Only this package knows the libraries that read mail and HTML.
 *
 * <p><b>Threads.</b> A letter is immutable; reading one shares nothing.
 */
package limberboard.letters.mail;
