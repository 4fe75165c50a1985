interface Transaction {
  readonly done: Promise<void>;
  readonly error: DOMException | null;
  abort(): void;
}

/**
 * Does some work in a transaction and waits until it is done; if anything goes wrong, nothing of it stays.
 *
 * @error throws the transaction's own error where it has one, since a request only says that it was aborted.
 */
export async function wholeTransaction<T>(transaction: Transaction, work: () => Promise<T>): Promise<T> {
  // A failed request rejects `done` too; it is answered for below.
  transaction.done.catch(() => undefined);
  try {
    const value = await work();
    await transaction.done;
    return value;
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    throw transaction.error ?? error;
  }
}
