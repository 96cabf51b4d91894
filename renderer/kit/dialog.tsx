import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { IconButton } from './icon-button.tsx';

/** A window over the screen that asks one thing. Escape and the cross close it; focus returns where it was. */
export function Dialog(props: {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Buttons at the foot, the main one first: Tab comes to it before the others. */
  readonly actions?: ReactNode;
  readonly size?: 'small' | 'large' | undefined;
}) {
  return (
    <ModalOverlay
      className="modal-overlay"
      isOpen={props.isOpen}
      onOpenChange={(isOpen) => {
        if (!isOpen) props.onClose();
      }}
      isDismissable
    >
      <Modal className={`modal modal-${props.size ?? 'small'}`}>
        <AriaDialog className="dialog">
          <header className="dialog-head">
            <Heading slot="title" className="dialog-title">
              {props.title}
            </Heading>
            <IconButton label="Close" icon={<X size={16} aria-hidden="true" />} onPress={props.onClose} />
          </header>
          <div className="dialog-body">{props.children}</div>
          {props.actions === undefined ? null : <footer className="dialog-foot">{props.actions}</footer>}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
