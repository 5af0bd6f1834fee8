import { createContext, type ReactNode, use, useCallback, useEffect, useState } from 'react';
import { label } from '../words/label.ts';
import { Button } from './button.tsx';
import styles from './toast.module.css';

export interface Toast {
  readonly text: string;
  /** Takes the thing back that the toast tells of. */
  readonly undo?: () => void | Promise<void>;
}

const ToastContext = createContext<(toast: Toast) => void>(() => {});
/** Tells what was just done, and offers to take it back. */
export const useToast = () => use(ToastContext);

const SECONDS = 12;

export function ToastProvider({ children }: { readonly children: ReactNode }) {
  const [toast, setToast] = useState<Toast>();
  const [held, setHeld] = useState(false);
  const show = useCallback((next: Toast) => setToast(next), []);
  const close = () => {
    setHeld(false);
    setToast(undefined);
  };
  useEffect(() => {
    if (toast === undefined || held) return;
    const timer = setTimeout(() => setToast(undefined), SECONDS * 1000);
    return () => clearTimeout(timer);
  }, [toast, held]);
  return (
    <ToastContext value={show}>
      {children}
      {/** biome-ignore lint/a11y/noStaticElementInteractions: only holds the message while a finger or the focus is on it */}
      <div
        className={styles.region}
        onFocus={() => setHeld(true)}
        onBlur={() => setHeld(false)}
        onPointerEnter={() => setHeld(true)}
        onPointerLeave={() => setHeld(false)}
      >
        <div role="status" className={toast === undefined ? '' : styles.toast}>
          {toast === undefined ? null : (
            <>
              <p>{toast.text}</p>
              {toast.undo === undefined ? null : (
                <Button
                  onClick={() => {
                    close();
                    void toast.undo?.();
                  }}
                >
                  {label('web.undo')}
                </Button>
              )}
              <Button look="quiet" aria-label={label('web.close')} onClick={close}>
                <span aria-hidden="true">×</span>
              </Button>
            </>
          )}
        </div>
      </div>
    </ToastContext>
  );
}
