package endfloat.http;

import endfloat.catalogue.Catalogue;
import endfloat.http.live.LiveDesk;
import endfloat.http.live.LiveRoutes;
import endfloat.record.Shelf;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.ee10.servlet.ServletContextHandler;
import org.eclipse.jetty.ee10.servlet.SessionHandler;
import org.eclipse.jetty.util.component.LifeCycle;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.eclipse.jetty.websocket.core.server.WebSocketServerComponents;

/** The running server. */
public final class Server implements AutoCloseable {
  static final int UPLOAD_LIMIT = 32_000_000;
  static final int MESSAGE_LIMIT = 4_000_000;

  /** Held here, because the logging of the JDK forgets the level of a logger nobody holds. */
  private static final List<Logger> QUIET =
      List.of(Logger.getLogger("org.eclipse.jetty"), Logger.getLogger("io.javalin"));

  private final Javalin javalin;
  private final LiveDesk desk;
  private final Settings settings;

  private Server(Javalin javalin, LiveDesk desk, Settings settings) {
    this.javalin = javalin;
    this.desk = desk;
    this.settings = settings;
  }

  /**
   * How to serve.
   *
   * @param host address to listen on; 127.0.0.1 keeps it on this machine
   * @param port 0 for any free one
   * @param token key of the opening link
   * @param allowed further names or origins it may be spoken to under
   */
  public record Settings(String host, int port, String token, List<String> allowed) {}

  /** Starts and returns once requests are answered. */
  public static Server start(Shelf shelf, Settings settings) {
    // What goes wrong with a request is told by Failures, what stops the start by the exception.
    QUIET.forEach(logger -> logger.setLevel(Level.OFF));
    List<String> names = new ArrayList<>(Hosts.LOOPBACK);
    names.addAll(settings.allowed());
    Guard guard = new Guard(new Hosts(names), settings.token());
    WebFolder page = WebFolder.ofPage();
    PageFrame frame = new PageFrame(page);
    LiveDesk desk = LiveDesk.of(shelf);
    Javalin javalin =
        Javalin.create(
            config -> {
              limits(config, settings);
              config.routes.before(guard);
              config.routes.before(Failures::refuseTooLarge);
              config.routes.wsBeforeUpgrade(guard);
              new Failures(frame).addTo(config.routes);
              new Pages(frame, shelf, Catalogue.library()).addTo(config.routes);
              new PageFiles(page, WebFolder.ofModules()).addTo(config.routes);
              new RecordRoutes(shelf, desk).addTo(config.routes);
              new ReportRoutes(shelf, desk).addTo(config.routes);
              new RerunRoutes(shelf, desk).addTo(config.routes);
              new PhotoRoutes(shelf).addTo(config.routes);
              new TableRoutes(desk).addTo(config.routes);
              new TableInRoutes(desk).addTo(config.routes);
              new FleetRoutes(shelf, desk).addTo(config.routes);
              new CompareRoutes(shelf, desk).addTo(config.routes);
              new CatalogueRoutes(Catalogue.library()).addTo(config.routes);
              new LiveRoutes(desk).addTo(config.routes);
            });
    return new Server(javalin.start(), desk, settings);
  }

  private static void limits(JavalinConfig config, Settings settings) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.jetty.host = settings.host();
    config.jetty.port = settings.port();
    config.jetty.threadPool = new QueuedThreadPool(64, 4);
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    config.jetty.multipartConfig.maxFileSize(UPLOAD_LIMIT, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxTotalRequestSize(UPLOAD_LIMIT, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxInMemoryFileSize(UPLOAD_LIMIT, SizeUnit.BYTES);
    config.jetty.modifyServletContextHandler(Server::withoutSessions);
    config.jetty.modifyWebSocketServletFactory(
        sockets -> {
          sockets.setMaxTextMessageSize(MESSAGE_LIMIT);
          sockets.setIdleTimeout(Duration.ofMinutes(10));
        });
    config.http.maxRequestSize = UPLOAD_LIMIT;
    config.http.compressionStrategy = CompressionStrategy.GZIP;
  }

  /**
   * No session, which nothing here uses, and no packing of messages, which between two programs of
   * one machine costs more time than it saves.
   */
  private static void withoutSessions(ServletContextHandler context) {
    SessionHandler sessions = new SessionHandler();
    sessions.setSessionTrackingModes(Set.of());
    sessions.setMaxInactiveInterval(60);
    context.setSessionHandler(sessions);
    context.addEventListener(
        new LifeCycle.Listener() {
          @Override
          public void lifeCycleStarted(LifeCycle started) {
            WebSocketServerComponents.getWebSocketComponents(context)
                .getExtensionRegistry()
                .unregister("permessage-deflate");
          }
        });
  }

  /** The port it listens on. */
  public int port() {
    return javalin.port();
  }

  /** The link that lets a browser in. */
  public String link() {
    return link(port(), settings.token());
  }

  /** The link of a server on this machine. */
  public static String link(int port, String token) {
    return "http://127.0.0.1:" + port + "/?" + Guard.TOKEN + "=" + token;
  }

  @Override
  public void close() {
    javalin.stop();
    desk.close();
  }
}
