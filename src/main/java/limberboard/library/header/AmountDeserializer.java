package limberboard.library.header;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import java.io.IOException;
import limberboard.library.value.Amount;

/** Reads an amount: a quantity, a measure's name, or {@code {measure: name, times: 1.1}}. */
final class AmountDeserializer extends StdDeserializer<Amount> {
  private static final long serialVersionUID = 1L;
  private static final String FORM = "write a quantity, a measure's name or {measure: x, times: 2}";

  AmountDeserializer() {
    super(Amount.class);
  }

  @Override
  public Amount deserialize(JsonParser parser, DeserializationContext context) throws IOException {
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      JsonNode node = context.readTree(parser);
      return measured(node, context);
    }
    if (parser.currentToken() != JsonToken.VALUE_STRING) {
      return (Amount) context.handleUnexpectedToken(Amount.class, parser);
    }
    String text = parser.getText();
    try {
      return Amount.of(text);
    } catch (IllegalArgumentException e) {
      return (Amount) context.handleWeirdStringValue(Amount.class, text, "%s", e.getMessage());
    }
  }

  private static Amount measured(JsonNode node, DeserializationContext context) throws IOException {
    String measure = node.path("measure").asText("");
    double times = node.path("times").asDouble(node.has("times") ? 0 : 1);
    if (measure.isEmpty() || times <= 0) {
      return (Amount) context.handleWeirdStringValue(Amount.class, node.toString(), "%s", FORM);
    }
    return new Amount.Measured(measure, times);
  }
}
