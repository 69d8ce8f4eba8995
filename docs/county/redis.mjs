/** A Redis server of this run's own: a free loopback port, a password, a temporary folder, nothing kept when it stops. */
import { spawn } from "node:child_process";
import { randomUUID } from "node:crypto";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Redis } from "ioredis";

/** Starts it and gives how to reach it. It ends with this process, at the latest. */
export async function startRedis() {
  const folder = mkdtempSync(join(tmpdir(), "county-"));
  const connection = { host: "127.0.0.1", port: await freePort(), password: randomUUID() };
  // The settings go in through a pipe: a command line, and so the password, could be read by anyone on the machine.
  const server = spawn("redis-server", ["-"], { stdio: ["pipe", "ignore", "inherit"] });
  server.stdin.on("error", () => {}); // where the server is gone before it has read, its end is said below
  server.stdin.end(`
    bind ${connection.host}
    port ${connection.port}
    requirepass ${connection.password}
    dir "${folder}"
    save ""
    appendonly no
    maxmemory-policy noeviction
  `);
  server.once("error", ({ message }) => fail(`no redis-server to start: ${message}`));
  server.once("exit", (code) => fail(`Redis ended with code ${code}`));
  process.once("exit", () => {
    server.kill("SIGKILL");
    rmSync(folder, { recursive: true, force: true });
  });

  const client = new Redis({ ...connection, maxRetriesPerRequest: null, retryStrategy: () => 20 });
  client.on("error", () => {}); // refused until the server listens
  await client.ping();
  client.disconnect();
  return connection;
}

function fail(message) {
  console.error(message);
  process.exit(1);
}

async function freePort() {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const { port } = server.address();
  await new Promise((closed) => server.close(closed));
  return port;
}
