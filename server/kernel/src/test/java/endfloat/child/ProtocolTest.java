package endfloat.child;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.spencerpark.jupyter.kernel.display.mime.MIMEType;
import io.github.spencerpark.jupyter.messages.Header;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.publish.PublishError;
import io.github.spencerpark.jupyter.messages.publish.PublishExecuteInput;
import io.github.spencerpark.jupyter.messages.publish.PublishExecuteResult;
import io.github.spencerpark.jupyter.messages.publish.PublishStatus;
import io.github.spencerpark.jupyter.messages.publish.PublishStream;
import io.github.spencerpark.jupyter.messages.reply.CompleteReply;
import io.github.spencerpark.jupyter.messages.reply.ErrorReply;
import io.github.spencerpark.jupyter.messages.reply.ExecuteReply;
import io.github.spencerpark.jupyter.messages.reply.InspectReply;
import io.github.spencerpark.jupyter.messages.reply.IsCompleteReply;
import io.github.spencerpark.jupyter.messages.reply.KernelInfoReply;
import io.github.spencerpark.jupyter.messages.request.CompleteRequest;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import io.github.spencerpark.jupyter.messages.request.HistoryRequest;
import io.github.spencerpark.jupyter.messages.request.InspectRequest;
import io.github.spencerpark.jupyter.messages.request.InterruptRequest;
import io.github.spencerpark.jupyter.messages.request.IsCompleteRequest;
import io.github.spencerpark.jupyter.messages.request.KernelInfoRequest;
import io.github.spencerpark.jupyter.messages.request.ShutdownRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.zeromq.SocketType;

/**
 * The kernel held to its protocol, message by message, by sockets of any client.
 *
 * <p>Source: the published description of the kernel message protocol, version 5.3 (messaging,
 * connection files), from memory.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ProtocolTest {
  @TempDir static Path folder;
  private static RunningChild child;

  @BeforeAll
  static void starts() throws Exception {
    child = new RunningChild(folder);
  }

  @AfterAll
  static void ends() {
    child.close();
  }

  @Test
  void onlyItsOwnerMayReadTheConnectionFile() throws Exception {
    assertEquals(
        "rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(child.file)));
    assertEquals(64, ConnectionFile.read(child.file).ends().getKey().length());
    assertThrows(IOException.class, () -> ConnectionFile.write(child.connection, child.file));
  }

  @Test
  void aKernelWithoutAKeyOrOpenToTheNetworkIsNotStarted() throws Exception {
    String good = Files.readString(child.file);
    Path bad = folder.resolve("bad.json");
    Files.writeString(bad, good.replace(child.connection.ends().getKey(), ""));
    assertThrows(IOException.class, () -> ConnectionFile.read(bad));
    Files.writeString(bad, good.replace("127.0.0.1", "0.0.0.0"));
    assertThrows(IOException.class, () -> ConnectionFile.read(bad));
  }

  @Test
  void theHeartbeatComesBackByteForByte() {
    byte[] beat = "beat".getBytes(StandardCharsets.UTF_8);
    child.heartbeat.setReceiveTimeOut(30_000);
    child.heartbeat.send(beat);
    assertArrayEquals(beat, child.heartbeat.recv());
  }

  @Test
  void saysWhatItIsOnShellAndControl() throws Exception {
    for (SignedSocket socket : List.of(child.shell, child.control)) {
      Message<?> asked =
          child.ask(socket, MessageType.KERNEL_INFO_REQUEST, new KernelInfoRequest());
      Message<?> reply = child.reply(socket, asked);
      KernelInfoReply info = (KernelInfoReply) reply.getContent();
      assertEquals("5.3", info.getProtocolVersion());
      assertEquals("Java", info.getLangInfo().getName());
      assertEquals("kernel_info_reply", reply.getHeader().getType().getName());
      assertEquals(asked.getHeader().getId(), reply.getParentHeader().getId());
      assertEquals(asked.getHeader().getSessionId(), reply.getParentHeader().getSessionId());
    }
  }

  @Test
  void publishesBusyInputStreamResultAndIdleUnderTheRequest() throws Exception {
    Message<?> asked = child.execute("System.out.println(\"hello\"); 6 * 7");
    List<Message<?>> told = child.idle(asked);
    ExecuteReply reply = (ExecuteReply) child.reply(child.shell, asked).getContent();
    assertEquals(PublishStatus.State.BUSY, ((PublishStatus) told.get(0).getContent()).getState());
    PublishExecuteInput input = content(told, PublishExecuteInput.class);
    assertEquals(reply.getExecutionCount(), input.getCount());
    assertEquals("hello\n", content(told, PublishStream.class).getText());
    PublishExecuteResult result = content(told, PublishExecuteResult.class);
    assertEquals("42", result.getData(MIMEType.TEXT_PLAIN));
    assertEquals(reply.getExecutionCount(), result.getCount());
    assertTrue(told.stream().allMatch(m -> RunningChild.isOf(asked).test(m)));
  }

  @Test
  void countsWhatIsExecutedButNotWhatIsSilent() throws Exception {
    int first = count(child.execute("1"));
    assertEquals(first + 1, count(child.execute("2")));
    Message<?> silent = child.execute("3", true, null);
    assertEquals(first + 1, count(silent));
    List<Message<?>> told = child.idle(silent);
    assertTrue(told.stream().noneMatch(m -> m.getContent() instanceof PublishExecuteInput));
    assertTrue(told.stream().noneMatch(m -> m.getContent() instanceof PublishExecuteResult));
    assertEquals(first + 2, count(child.execute("4")));
  }

  private int count(Message<?> asked) throws Exception {
    return ((ExecuteReply) child.reply(child.shell, asked).getContent()).getExecutionCount();
  }

  @Test
  void answersAnErrorWithItsNameAndPublishesIt() throws Exception {
    Message<?> asked = child.execute("throw new IllegalStateException(\"no oil\");");
    ErrorReply reply = (ErrorReply) child.reply(child.shell, asked).getContent();
    assertEquals("error", reply.getStatus());
    assertEquals("java.lang.IllegalStateException", reply.getErrorName());
    assertEquals("no oil", reply.getErrorMessage());
    PublishError told = content(child.idle(asked), PublishError.class);
    assertEquals("no oil", told.getErrorMessage());
    assertEquals("42", result("42"));
  }

  @Test
  void refusesAWrongSignatureAndGoesOnAnswering() throws Exception {
    ExecuteRequest code =
        new ExecuteRequest(
            "System.setProperty(\"reached\", \"yes\");", false, true, Map.of(), false, true);
    for (int i = 0; i < 3; i++) {
      child.sendWithKey(
          "another key", new Message<>(new Header<>(MessageType.EXECUTE_REQUEST), code));
    }
    assertEquals(
        "null", result("String.valueOf(System.getProperty(\"reached\"))").replace("\"", ""));
  }

  @Test
  void whoDoesNotHoldTheKeysHearsNothingOfWhatIsPublished() throws Exception {
    SignedSocket stranger =
        new Connection(child.connection.ends(), Optional.empty())
            .connected(child.context, SocketType.SUB, child.connection.ends().getIopubPort());
    stranger.subscribe();
    SignedSocket guesser =
        new Connection(child.connection.ends(), Optional.of(Sealing.fresh()))
            .connected(child.context, SocketType.SUB, child.connection.ends().getIopubPort());
    guesser.subscribe();
    try (SignedSocket late =
        child.connection.connected(
            child.context, SocketType.SUB, child.connection.ends().getIopubPort())) {
      late.subscribe();
      // Who holds the keys and came last hears it, so the others would have.
      do {
        assertEquals("42", result("42"));
      } while (!late.hasMore());
    }
    assertFalse(stranger.hasMore());
    assertFalse(guesser.hasMore());
    stranger.close();
    guesser.close();
  }

  @Test
  void dropsWhatIsNoMessageAndGoesOnAnswering() throws Exception {
    child.shell.socket().send("nonsense");
    child.shell.socket().sendMore("<IDS|MSG>");
    child.shell.socket().send("too short");
    assertEquals("5", result("2 + 3"));
  }

  @Test
  void refusesToReadFromAKeyboard() throws Exception {
    Message<?> asked = child.execute("System.in.read()");
    ErrorReply reply = (ErrorReply) child.reply(child.shell, asked).getContent();
    assertTrue(reply.getErrorMessage().contains("keyboard"), reply.getErrorMessage());
  }

  @Test
  void interruptsATightLoop() throws Exception {
    Message<?> asked = child.execute("System.out.println(\"begun\"); while (true) {}");
    child.heard(
        child.published,
        m -> RunningChild.isOf(asked).test(m) && m.getContent() instanceof PublishStream);
    Message<?> stop =
        child.ask(child.control, MessageType.INTERRUPT_REQUEST, new InterruptRequest());
    assertNotNull(child.reply(child.control, stop));
    ErrorReply reply = (ErrorReply) child.reply(child.shell, asked).getContent();
    assertEquals("Interrupted", reply.getErrorName());
    assertEquals("8", result("3 + 5"));
  }

  @Test
  void completesInspectsAndTellsWhatIsComplete() throws Exception {
    Message<?> asked =
        child.ask(child.shell, MessageType.COMPLETE_REQUEST, new CompleteRequest("\"x\".leng", 8));
    CompleteReply complete = (CompleteReply) child.reply(child.shell, asked).getContent();
    assertEquals(List.of("length()"), complete.getMatches());
    assertEquals(4, complete.getCursorStart());
    asked =
        child.ask(child.shell, MessageType.INSPECT_REQUEST, new InspectRequest("Math.abs(", 9, 0));
    assertEquals("ok", ((InspectReply) child.reply(child.shell, asked).getContent()).getStatus());
    assertEquals(IsCompleteReply.Status.VALID_CODE, completeness("int a = 1;"));
    assertEquals(IsCompleteReply.Status.NOT_FINISHED, completeness("int f() {"));
  }

  private IsCompleteReply.Status completeness(String code) throws Exception {
    Message<?> asked =
        child.ask(child.shell, MessageType.IS_COMPLETE_REQUEST, new IsCompleteRequest(code));
    return ((IsCompleteReply) child.reply(child.shell, asked).getContent()).getStatus();
  }

  @Test
  void answersForAHistoryItDoesNotKeep() throws Exception {
    HistoryRequest request = new HistoryRequest.Tail(false, true, 10);
    Message<?> asked = child.ask(child.shell, MessageType.HISTORY_REQUEST, request);
    assertEquals("history_reply", child.reply(child.shell, asked).getHeader().getType().getName());
  }

  @Test
  void endsWithWhoeverStartedIt() throws Exception {
    Process parent = new ProcessBuilder("sleep", "600").start();
    try (RunningChild orphan = new RunningChild(folder, ConnectionFile.fresh(), parent.pid())) {
      assertTrue(orphan.process.isAlive());
      parent.destroyForcibly();
      assertTrue(orphan.process.waitFor(30, TimeUnit.SECONDS));
    } finally {
      parent.destroyForcibly();
    }
  }

  @Test
  @Order(Integer.MAX_VALUE)
  void shutsDownAfterItsReply() throws Exception {
    Message<?> asked =
        child.ask(child.control, MessageType.SHUTDOWN_REQUEST, ShutdownRequest.SHUTDOWN);
    assertNotNull(child.reply(child.control, asked));
    assertTrue(child.process.waitFor(30, TimeUnit.SECONDS));
    assertEquals(0, child.process.exitValue());
    assertFalse(child.process.isAlive());
  }

  private static String result(String code) throws Exception {
    Message<?> asked = child.execute(code);
    assertTrue(child.reply(child.shell, asked).getContent() instanceof ExecuteReply);
    return (String)
        content(child.idle(asked), PublishExecuteResult.class).getData(MIMEType.TEXT_PLAIN);
  }

  private static <T> T content(List<Message<?>> told, Class<T> type) {
    return type.cast(
        told.stream()
            .map(m -> (Object) m.getContent())
            .filter(type::isInstance)
            .findFirst()
            .orElseThrow());
  }
}
