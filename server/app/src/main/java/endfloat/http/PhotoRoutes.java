package endfloat.http;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import endfloat.record.PhotoMetadata;
import endfloat.record.Photographs;
import endfloat.record.Photographs.Photograph;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;

/**
 * Photographs of a record: taken in, and given out as they are or without where they were taken.
 */
final class PhotoRoutes {
  private final Shelf shelf;

  PhotoRoutes(Shelf shelf) {
    this.shelf = shelf;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/api/records/{id}/photos", this::keep);
    routes.get("/api/records/{id}/photos/{name}", this::give);
  }

  private Photographs photographs(Context ctx) {
    return Photographs.of(shelf.files(), shelf.place(new RecordId(ctx.pathParam("id"))));
  }

  private void keep(Context ctx) throws IOException {
    UploadedFile file = ctx.uploadedFile("photo");
    if (file == null) {
      throw new RequestRefusedException(
          400, "The request holds no photograph.", "Choose a JPEG or PNG file.");
    }
    byte[] bytes;
    try (InputStream in = file.content()) {
      bytes = in.readNBytes(Photographs.MOST_BYTES + 1);
    }
    if (bytes.length > Photographs.MOST_BYTES) {
      throw new RequestRefusedException(
          413,
          "The photograph is larger than " + Photographs.MOST_BYTES / 1_000_000 + " MB.",
          "Save it smaller; 3,000 pixels across are enough for a report.");
    }
    // one that cannot be read to its end could not go into a report
    PhotoMetadata.stripped(bytes);
    String name = photographs(ctx).keep(bytes);
    ctx.status(201);
    Answers.json(ctx, JsonNodeFactory.instance.objectNode().put("photo", name));
  }

  private void give(Context ctx) {
    Photograph photo = photographs(ctx).read(ctx.pathParam("name"));
    boolean export = ctx.queryParam("export") != null;
    // the name is the hash of the bytes, so they never change
    ctx.header("Cache-Control", "private, max-age=31536000, immutable");
    ctx.header("Content-Security-Policy", "default-src 'none'; sandbox; frame-ancestors 'none'");
    ctx.header("Content-Disposition", "inline; filename=\"" + photo.name() + "\"");
    ctx.disableCompression().contentType(photo.type());
    ctx.result(export ? PhotoMetadata.stripped(photo.bytes()) : photo.bytes());
  }
}
