import type { ComponentProps } from 'react';
import { Link } from 'wouter';
import styles from './button.module.css';

interface Look {
  /** `main` for the one thing to do on a screen; `quiet` where many stand together. */
  readonly look?: 'main' | 'plain' | 'quiet' | 'danger';
}

export function Button({ look = 'plain', className, type = 'button', ...rest }: ComponentProps<'button'> & Look) {
  return <button type={type} className={`${styles.button} ${styles[look]} ${className ?? ''}`} {...rest} />;
}

/** A link that looks like a button, for going somewhere. */
export function ButtonLink({
  look = 'plain',
  href,
  children,
}: Look & { readonly href: string; readonly children: React.ReactNode }) {
  return (
    <Link href={href} className={`${styles.button} ${styles[look]}`}>
      {children}
    </Link>
  );
}
