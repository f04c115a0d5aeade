const WAITS = [300, 700, 1500, 3000, 5000];

/**
 * The line to the server. It comes back by itself after a loss, ever less eagerly.
 */
export class Connection {
  #tries = 0;
  #socket;
  #timer;
  #closed = false;

  /**
   * @param {object} on
   * @param {() => any} on.open gives a new socket
   * @param {() => void} on.up
   * @param {() => void} on.down
   * @param {(message: any) => void} on.message
   * @param {{set: (f: () => void, ms: number) => any, clear: (handle: any) => void}} timers
   */
  constructor(on, timers) {
    this.on = on;
    this.timers = timers;
  }

  start() {
    if (this.#closed) return;
    this.timers.clear(this.#timer);
    const socket = this.on.open();
    this.#socket = socket;
    socket.onopen = () => {
      this.#tries = 0;
      this.on.up();
    };
    socket.onmessage = (event) => this.on.message(JSON.parse(event.data));
    socket.onclose = () => {
      if (this.#socket !== socket || this.#closed) return;
      this.#socket = undefined;
      this.on.down();
      this.#timer = this.timers.set(() => this.start(), WAITS[Math.min(this.#tries, WAITS.length - 1)]);
      this.#tries += 1;
    };
  }

  /** Tries at once, where the network is known to be back. */
  hurry() {
    if (this.#socket === undefined) {
      this.#tries = 0;
      this.start();
    }
  }

  get isUp() {
    return this.#socket?.readyState === 1;
  }

  /** @param {object} message @returns {boolean} whether it left */
  send(message) {
    if (!this.isUp) return false;
    this.#socket.send(JSON.stringify(message));
    return true;
  }

  close() {
    this.#closed = true;
    this.timers.clear(this.#timer);
    this.#socket?.close();
  }
}
