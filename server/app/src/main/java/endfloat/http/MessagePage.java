package endfloat.http;

import endfloat.working.typeset.XmlText;

/** A page that holds one message and needs nothing else, not even the style sheet. */
final class MessagePage {
  private MessagePage() {}

  static String html(String message, String wayOut, String nonce) {
    return """
        <!doctype html>
        <html lang="en-GB">
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width">
        <title>Endfloat</title>
        <style nonce="{nonce}">
          body { margin: 15vh auto; max-width: 34em; padding: 0 1em; font: 1.05rem/1.5 serif; }
          h1 { font-size: 1.2rem; }
          @media (prefers-color-scheme: dark) { body { background: #14202b; color: #dfe6ea; } }
        </style>
        <main>
          <h1>{message}</h1>
          <p>{wayOut}</p>
        </main>
        """
        .replace("{nonce}", nonce)
        .replace("{message}", XmlText.escaped(message))
        .replace("{wayOut}", XmlText.escaped(wayOut));
  }
}
