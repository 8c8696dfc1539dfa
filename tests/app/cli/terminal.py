"""Runs a program on a terminal of its own and tells what it showed there.

    terminal.py COLUMNS UNTIL PROGRAM ARGUMENT…

Once UNTIL (may be empty) has been shown, and the program still runs, it gets Ctrl-C. Prints one JSON object: "shown" (all that
came), "while_running" (UNTIL came before the end), "status".
"""
import fcntl
import json
import os
import pty
import select
import struct
import sys
import termios
import time

columns, until, command = int(sys.argv[1]), sys.argv[2].encode(), sys.argv[3:]
pid, terminal = pty.fork()
if pid == 0:
    fcntl.ioctl(1, termios.TIOCSWINSZ, struct.pack('HHHH', 24, columns, 0, 0))
    os.execv(command[0], command)

shown, while_running, ends = b'', False, time.monotonic() + 60
while time.monotonic() < ends:
    if not select.select([terminal], [], [], 0.1)[0]:
        continue
    try:
        piece = os.read(terminal, 65536)
    except OSError:  # the other side is closed
        break
    if not piece:
        break
    shown += piece
    if until and until in shown and not while_running:
        while_running = True
        os.write(terminal, b'\x03')
status = os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1])
print(json.dumps({'shown': shown.decode('utf-8', 'replace'), 'while_running': while_running, 'status': status}))
