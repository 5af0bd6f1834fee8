import { Component, type ReactNode } from 'react';
import { Failure } from '../kit/failure.tsx';

interface Props {
  /** When it changes, the screen gets another chance. */
  readonly at: string;
  readonly children: ReactNode;
}

/** Keeps one broken screen from taking the whole page with it. React knows error boundaries only as classes. */
export class ErrorBoundary extends Component<Props, { readonly error?: unknown; readonly at: string }> {
  override state: { readonly error?: unknown; readonly at: string } = { at: this.props.at };

  static getDerivedStateFromError(error: unknown) {
    return { error };
  }

  static getDerivedStateFromProps(props: Props, state: { readonly at: string }) {
    return props.at === state.at ? null : { at: props.at, error: undefined };
  }

  override render() {
    return this.state.error === undefined ? this.props.children : <Failure error={this.state.error} />;
  }
}
