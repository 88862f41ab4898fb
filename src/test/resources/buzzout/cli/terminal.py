"""Runs a command in a terminal of its own, does one thing after another to it, and prints what became of it, as JSON.

terminal.py STEP... -- COMMAND...
Steps: wait:TEXT until it was written; type:KEYS; insist:KEYS typed until the screen is left; kill:NUMBER; size:ROWSxCOLUMNS; storm:COUNT sizes at random; close the
terminal.
"""
import fcntl, json, os, pty, random, select, signal, struct, sys, termios, time

PATIENCE = 60
steps = sys.argv[1 : sys.argv.index("--")]
command = sys.argv[sys.argv.index("--") + 1 :]


def resize(rows, columns):
    fcntl.ioctl(terminal, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))


child, terminal = pty.fork()
if child == 0:
    os.environ.update(TERM="xterm-256color", LC_ALL="C.UTF-8")
    signal.signal(signal.SIGHUP, signal.SIG_DFL)  # Under nohup the program would rightly stay deaf to it.
    time.sleep(0.2)
    os.execvp(command[0], command)
resize(24, 80)
before = termios.tcgetattr(terminal)
written = b""


def take(seconds):
    global written
    ready, _, _ = select.select([terminal], [], [], seconds)
    if ready:
        try:
            more = os.read(terminal, 65536)
        except OSError:
            return False
        written += more
        return bool(more)
    return True


closed = False
for step in steps:
    name, _, what = step.partition(":")
    if name == "wait":
        deadline = time.time() + PATIENCE
        while what.encode() not in written:
            if time.time() > deadline or not take(0.1):
                os.kill(child, signal.SIGKILL)
                sys.exit("waited in vain for " + what + " in " + written[-2000:].decode("utf-8", "replace"))
    elif name == "type":
        os.write(terminal, what.encode())
    elif name == "insist":
        deadline = time.time() + PATIENCE
        while b"\x1b[?1049l" not in written and time.time() < deadline:
            os.write(terminal, what.encode())
            take(0.2)
    elif name == "kill":
        os.kill(child, int(what))
    elif name == "size":
        resize(*map(int, what.split("x")))
        written = b""
    elif name == "storm":
        sizes = random.Random(5)
        for _ in range(int(what)):
            resize(sizes.randrange(1, 100), sizes.randrange(1, 400))
            take(0.01)
        resize(24, 80)
    elif name == "close":
        os.close(terminal)
        closed = True

deadline = time.time() + PATIENCE
status = None
while status is None and time.time() < deadline:
    if not closed:
        take(0.05)
    else:
        time.sleep(0.05)
    ended, how = os.waitpid(child, os.WNOHANG)
    if ended:
        status = os.waitstatus_to_exitcode(how)
if status is None:
    os.kill(child, signal.SIGKILL)
    sys.exit("it does not end; it wrote last " + written[-600:].decode("utf-8", "replace"))
settings = before if closed else termios.tcgetattr(terminal)
while not closed and select.select([terminal], [], [], 0)[0] and take(0):
    pass
after = written.rpartition(b"\x1b[?1049l")[2].decode("utf-8", "replace").replace("\r\n", "\n")
shown = written.rfind(b"\x1b[?25h") > written.rfind(b"\x1b[?25l")
left = written.rfind(b"\x1b[?1049l") > written.rfind(b"\x1b[?1049h")
changed = [name for name, is_so in (("settings", settings == before), ("cursor", shown), ("screen", left)) if not is_so]
print(json.dumps({"status": status, "changed": changed, "after": after}))
